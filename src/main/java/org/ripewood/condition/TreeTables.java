package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescription.CodeKind;
import org.ripewood.platform.records.TableDescriptions;
import org.ripewood.records.BranchRole;
import org.ripewood.sites.TimeZones;
import org.ripewood.trees.Departure;
import org.ripewood.trees.EarlierWords;

/** Sites, trees and what is on record of them. */
@ApplicationScoped
class TreeTables implements TableDescriptions {

    private static final String TREE_ID = "tree_id";
    private static final String SITE = "site";
    private static final String RECORDED_AT = "recorded_at";

    private final CourseContent content;

    TreeTables(CourseContent content) {
        this.content = content;
    }

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named(SITE)
                        .numbered()
                        .plain("name", "latitude", "longitude", "zone")
                        // of one school's own ground and people another school knows nothing
                        .flagAtSchool("school_ground")
                        .refersAtSchool("entered_by_id", "person")
                        .version()
                        .leftOut(
                                "readings_revision",
                                "counts renewals of what is worked out from the readings",
                                row -> 0L)
                        .done(),
                TableDescription.named("site_month")
                        .orderedBy("site_id", "month_no")
                        .partOf("site_id", SITE)
                        .plain("month_no", "mean_minimum_celsius", "mean_maximum_celsius")
                        .done(),
                TableDescription.named("site_reading")
                        .orderedBy("site_id", "read_on")
                        .partOf("site_id", SITE)
                        .plain("read_on", "min_celsius", "max_celsius")
                        .done(),
                TableDescription.named("tree")
                        .numbered()
                        .plain("label")
                        .code("species", CodeKind.SPECIES)
                        .refers("keeper_id", "person")
                        .refers("site_id", SITE)
                        .plain("came_on", "left_on")
                        .words("origin", "note")
                        .writtenBy("by_id")
                        .plain(RECORDED_AT)
                        .leftOut(
                                "words_revision",
                                "counts changes of what is said of it, which are rows of their own",
                                row -> 0L)
                        .version()
                        .done(),
                ofTree("tree_words")
                        .oneOf("kind", EarlierWords.Kind.values())
                        .words("words")
                        .done(),
                ofTree("tree_keeping").refers("keeper_id", "person").plain("since").done(),
                ofTree("tree_departure")
                        .plain("left_on")
                        .oneOf("how", Departure.How.values())
                        .words("note")
                        .done(),
                ofTree("wound")
                        .plain("place")
                        .plain("made_on", "first_width_mm", "first_length_mm", "height_mm")
                        .plain("bearing_degrees", "deadwood_by_design")
                        .oneOf("source", Source.values())
                        .done(),
                ofTree("branch")
                        .plain("name")
                        .oneOf("role", BranchRole.values())
                        .plain("height_mm", "bearing_degrees", "entered_on", "removed_on")
                        .done(),
                ofTree("observation")
                        .oneOf("fact", Arrays.stream(Fact.values()).map(Fact::code).toList())
                        .plain("number_value", "flag_value", "word_value", "observed_on")
                        .oneOf("source", Source.values())
                        .words("note")
                        .refers("wound_id", "wound")
                        .refers("branch_id", "branch")
                        .plain("at_height_mm")
                        .refers("superseded_by", "observation")
                        .done(),
                ofTree("container_stay")
                        .oneOf("kind", List.of("ground", "nursery", "training", "show"))
                        .plain("description")
                        .plain("litres", "since")
                        .done(),
                ofTree("work_done")
                        .code("technique", CodeKind.TECHNIQUE)
                        .plain("done_on", "stress", "recovery_days")
                        .plain("foliage_share", "root_share", "clock")
                        .words("note")
                        .done());
    }

    @Override
    public List<Fault> faults(String table, Map<String, @Nullable Object> row) {
        return switch (table) {
            case SITE -> zoneFault(String.valueOf(row.get("zone")));
            case "tree" -> speciesFault(String.valueOf(row.get("species")));
            case "observation" -> valueFault(row);
            default -> List.of();
        };
    }

    private static List<Fault> zoneFault(String zone) {
        var fault = TimeZones.faultOf(zone);
        return fault == null ? List.of() : List.of(new Fault("zone", fault));
    }

    private List<Fault> speciesFault(String code) {
        var known = content.inForce().species().keySet();
        return known.contains(code)
                ? List.of()
                : List.of(
                        new Fault(
                                "species",
                                "there is no species “%s” in the course content.%s"
                                        .formatted(code, Suggestion.maybe(known, code))));
    }

    private static List<Fault> valueFault(Map<String, @Nullable Object> row) {
        var fact = Fact.find(String.valueOf(row.get("fact"))).orElseThrow();
        var field =
                switch (fact.kind()) {
                    case NUMBER -> "number_value";
                    case FLAG -> "flag_value";
                    case WORD -> "word_value";
                };
        var value = row.get(field);
        var refusal =
                value == null ? "expected a value of this kind" : fact.refusalOf(valueOf(value));
        return refusal == null
                ? List.of()
                : List.of(new Fault(TableDescription.camel(field), "%s".formatted(refusal)));
    }

    private static Value valueOf(Object value) {
        return value instanceof Double number
                ? Value.of(number)
                : value instanceof Boolean flag ? Value.of(flag) : Value.of(value.toString());
    }

    private static TableDescription.Telling ofTree(String name) {
        return TableDescription.named(name)
                .numbered()
                .partOf(TREE_ID, "tree")
                .writtenBy("by_id")
                .plain(RECORDED_AT);
    }
}
