package org.ripewood.web.trees;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.FactText;
import org.ripewood.platform.Paged;
import org.ripewood.records.Branch;
import org.ripewood.records.Observation;
import org.ripewood.records.Wound;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.TextFormat;

/**
 * What the page of observations shows.
 *
 * @param fact the one fact asked for; null for the list of all
 */
record ObservationPageModel(
        Tree tree,
        @Nullable Fact fact,
        @Nullable FactText text,
        List<FactLines.Block<FactLines.Recordable>> recordable,
        List<Wound> wounds,
        List<Branch> branches,
        Paged<Observation> observations,
        Map<Long, String> names,
        Map<String, FactText> texts,
        FormState typed) {

    public boolean asksWound() {
        return fact != null && fact.scope() == Fact.Scope.WOUND;
    }

    public boolean asksBranch() {
        return fact != null && fact.scope() == Fact.Scope.BRANCH;
    }

    public boolean asksHeight() {
        return fact != null && fact.scope() == Fact.Scope.HEIGHT;
    }

    public boolean flag() {
        return fact != null && fact.kind() == Fact.Kind.FLAG;
    }

    public String valueLabel() {
        return fact == null || fact.unit().isEmpty() ? "Value" : "Value, " + TextFormat.unit(fact);
    }

    public String valueHint() {
        return fact == null
                ? ""
                : "%s to %s"
                        .formatted(TextFormat.plain(fact.least()), TextFormat.plain(fact.most()));
    }

    public String title(Observation observation) {
        var found = texts.get(observation.fact().code());
        return found == null ? observation.fact().code() : found.title();
    }

    /** Where it was read; empty for the tree as a whole. */
    public String place(Observation observation) {
        var woundId = observation.woundId();
        if (woundId != null) {
            return wounds.stream()
                    .filter(wound -> wound.id() == woundId)
                    .map(Wound::place)
                    .findFirst()
                    .orElse("");
        }
        var branchId = observation.branchId();
        if (branchId != null) {
            return branches.stream()
                    .filter(branch -> branch.id() == branchId)
                    .map(Branch::name)
                    .findFirst()
                    .orElse("");
        }
        var heightMm = observation.heightMm();
        return heightMm == null ? "" : "at " + TextFormat.plain(heightMm) + " mm";
    }

    public String who(Observation observation) {
        return names.getOrDefault(observation.byId(), "");
    }
}
