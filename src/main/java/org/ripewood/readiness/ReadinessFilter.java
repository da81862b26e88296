package org.ripewood.readiness;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Standing;
import org.ripewood.course.Content;
import org.ripewood.people.Person;
import org.ripewood.people.Roster;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;

/** Which trees are shown; what nobody could have meant is refused with what was expected. */
final class ReadinessFilter {

    /** Reasons that are about no fact. */
    private static final Set<String> OTHER_REASONS =
            Set.of("load", "quiet", "heavy", "dose_foliage", "dose_root");

    private final Content content;
    private final ReadinessAsked asked;
    private final LocalDate freeBy;
    private final List<String> techniques;

    /**
     * A filter for a course; 400 with every fault when a code is unknown.
     *
     * @param freeBy the day until which free soon means
     */
    ReadinessFilter(Content content, Roster roster, ReadinessAsked asked, LocalDate freeBy) {
        this.content = content;
        this.asked = asked;
        this.freeBy = freeBy;
        this.techniques = techniques(content, asked.heldFrom());
        var faults = new ArrayList<Fault>();
        check(faults, "heldFrom", asked.heldFrom(), techniquesKnown(content));
        check(faults, "reason", asked.reason(), reasonsKnown());
        check(faults, "stage", asked.stage(), stagesKnown(content));
        check(faults, "species", asked.species(), content.species().keySet());
        var student = asked.student();
        if (student != null
                && roster.students().stream().map(Person::id).noneMatch(student::equals)) {
            faults.add(new Fault("student", "expected a student of this course, found " + student));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    /** Codes the filter's own technique stands for; empty when it asks for none, or for styling. */
    private static List<String> techniques(Content content, @Nullable String heldFrom) {
        if (heldFrom == null) {
            return List.of();
        }
        return content.works().stream()
                .filter(work -> work.code().equals(heldFrom))
                .findFirst()
                .map(Content.Work::techniques)
                .orElse(List.of(heldFrom));
    }

    private static Collection<String> techniquesKnown(Content content) {
        var known = new TreeSet<String>();
        known.add(ReadinessAsked.STYLING);
        content.works()
                .forEach(
                        work -> {
                            known.add(work.code());
                            known.addAll(work.techniques());
                        });
        return known;
    }

    private static Collection<String> reasonsKnown() {
        var known = new TreeSet<>(OTHER_REASONS);
        for (var fact : Fact.values()) {
            known.add(fact.code());
        }
        return known;
    }

    private static Collection<String> stagesKnown(Content content) {
        return content.stages().stream().map(stage -> stage.code()).toList();
    }

    private static void check(
            List<Fault> faults, String field, @Nullable String found, Collection<String> known) {
        if (found != null && !known.contains(found)) {
            var expected =
                    known.size() <= MOST_NAMED
                            ? "expected one of " + String.join(", ", known)
                            : "expected a known code";
            faults.add(
                    new Fault(
                            field,
                            "%s, found \"%s\".%s"
                                    .formatted(expected, found, Suggestion.maybe(known, found))));
        }
    }

    private static final int MOST_NAMED = 8;

    boolean shows(TreeRead tree) {
        var kept = tree.day().tree();
        return isOf(asked.student(), kept.keeperId())
                && isOf(asked.species(), kept.species())
                && isOf(asked.stage(), tree.day().stage().code())
                && (!asked.freeSoon() || (tree.heldFromStyling() && tree.isFree(freeBy)))
                && isHeld(tree);
    }

    private boolean isHeld(TreeRead tree) {
        if (asked.heldFrom() == null && asked.reason() == null) {
            return true;
        }
        return held(tree).stream().anyMatch(this::isBecause);
    }

    /** What is held on a tree of all the filter asks for. */
    private List<Standing> held(TreeRead tree) {
        var heldFrom = asked.heldFrom();
        if (heldFrom == null) {
            return tree.heldAmong(content.shortTitles().keySet());
        }
        if (heldFrom.equals(ReadinessAsked.STYLING)) {
            var styling = tree.styling();
            return styling == null || !tree.heldFromStyling() ? List.of() : List.of(styling);
        }
        return tree.heldAmong(techniques);
    }

    private boolean isBecause(Standing standing) {
        var reason = asked.reason();
        return reason == null
                || standing.reasons().stream()
                        .anyMatch(one -> Holds.byItself(one) && reason.equals(Holds.code(one)));
    }

    /** The technique that leads its column since it was asked for; null when none was. */
    @Nullable String technique() {
        var heldFrom = asked.heldFrom();
        return heldFrom != null && content.techniques().containsKey(heldFrom) ? heldFrom : null;
    }

    private static boolean isOf(@Nullable Object asked, Object found) {
        return asked == null || asked.equals(found);
    }
}
