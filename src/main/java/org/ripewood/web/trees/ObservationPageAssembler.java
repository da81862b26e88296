package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.course.FactText;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.records.Branches;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.records.Wounds;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.TextFormat;

/** Lays out what the page of observations shows. */
@ApplicationScoped
class ObservationPageAssembler {

    private static final int ROWS = 50;

    private final Trees trees;
    private final Observations observing;
    private final Wounds wounds;
    private final Branches branches;
    private final CourseContent content;
    private final TreeDays treeDays;

    ObservationPageAssembler(
            Trees trees,
            Observations observing,
            Wounds wounds,
            Branches branches,
            CourseContent content,
            TreeDays treeDays) {
        this.trees = trees;
        this.observing = observing;
        this.wounds = wounds;
        this.branches = branches;
        this.content = content;
        this.treeDays = treeDays;
    }

    ObservationPageModel lay(
            Actor actor, long treeId, @Nullable Fact fact, int page, FormState typed) {
        var inForce = content.inForce();
        var observations = observing.list(actor, treeId, new PageRequest(page, ROWS));
        return new ObservationPageModel(
                trees.get(actor, treeId),
                fact,
                fact == null ? null : inForce.text(fact),
                FactLines.recordable(inForce),
                wounds.of(actor, treeId),
                branches.of(actor, treeId),
                observations,
                trees.names(
                        actor,
                        treeId,
                        observations.items().stream()
                                .map(Observation::byId)
                                .collect(Collectors.toSet())),
                inForce.facts().values().stream()
                        .collect(Collectors.toMap(FactText::code, text -> text)),
                typed.refused() ? typed : filled(treeId, typed, observations.items()));
    }

    /** A new entry begins with today; a correction begins with what it corrects. */
    private FormState filled(long treeId, FormState typed, List<Observation> shown) {
        return shown.stream()
                .filter(seen -> typed.has("supersedes", seen.id()))
                .findFirst()
                .map(seen -> corrected(typed, seen))
                .orElseGet(() -> typed.with("observedOn", treeDays.at(treeId)));
    }

    private static FormState corrected(FormState typed, Observation seen) {
        return typed.with("value", TextFormat.typed(seen.value()))
                .with("observedOn", seen.observedOn())
                .withIfKnown("woundId", seen.woundId())
                .withIfKnown("branchId", seen.branchId())
                .withIfKnown("heightMm", seen.heightMm())
                .withIfKnown("note", seen.note());
    }
}
