package org.ripewood.course;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CrossReferences.Codes;

/** What the schema cannot say of a technique. */
final class TechniqueCheck {

    private final ContentDocuments shelf;
    private final Codes species;
    private final Codes techniques;
    private final Codes lessons;
    private final FactCheck facts;
    private final SeasonCheck seasons;
    private final AftercareCheck aftercare;
    private final Faults faults;

    TechniqueCheck(ContentDocuments shelf, Codes species, Codes techniques, Faults faults) {
        this.shelf = shelf;
        this.species = species;
        this.techniques = techniques;
        this.lessons = new Codes("lesson", shelf.codes(ContentKind.LESSON));
        this.facts = new FactCheck(faults);
        this.seasons = new SeasonCheck(shelf, species, faults);
        this.aftercare = new AftercareCheck(facts, faults);
        this.faults = faults;
    }

    void check(Part technique) {
        technique.each("lessons").forEach(lesson -> lessons.check(lesson, faults));
        technique.each("after").forEach(before -> techniques.check(before, faults));
        technique.each("goesAfter").forEach(before -> techniques.check(before, faults));
        checkPurpose(technique);
        technique.at("appliesTo").each("species").forEach(one -> species.check(one, faults));
        checkSkill(technique);
        facts.checkCondition(technique.at("neededWhen"));
        checkCriteria(technique.each("criteria"));
        seasons.check(technique);
        checkLoad(technique);
        checkMinutes(technique);
        checkDose(technique);
        technique.each("effects").forEach(this::checkEffect);
        aftercare.check(technique.each("aftercare"));
    }

    /** What stages ask for is asked in the words of techniques. */
    void checkStages(Part stages) {
        checkCriteria(stages.at("styling").each("criteria"));
        for (var stage : stages.each("stages")) {
            for (var asked : stage.each("readyWhen")) {
                facts.checkTest(asked);
                asked.each("overrides").forEach(other -> checkOverride(asked, other));
                facts.checkCondition(asked.at("when"));
            }
        }
    }

    private void checkSkill(Part technique) {
        var skill = technique.at("skillLesson");
        lessons.check(skill, faults);
        var lesson = shelf.all(ContentKind.LESSON).get(String.valueOf(skill.text()));
        if (lesson != null && !lesson.top().has("skill")) {
            faults.add(
                    skill,
                    "\"%s\", a lesson without a skill".formatted(skill.text()),
                    "a lesson that says what the student shows");
        }
    }

    /** Styling waits for all work on the material, which therefore cannot wait for styling. */
    private void checkPurpose(Part technique) {
        if (!"development".equals(technique.text("purpose"))) {
            return;
        }
        for (var before : technique.each("after")) {
            var styling = stylingUpTo(String.valueOf(before.text()), new HashSet<>());
            if (styling != null) {
                faults.add(
                        before,
                        "\"%s\", behind styling (%s), which waits for this"
                                .formatted(before.text(), styling),
                        "nothing of styling before work on the material");
            }
        }
    }

    /**
     * The first styling among a technique and all that comes before it; null when there is none.
     */
    private @Nullable String stylingUpTo(String code, Set<String> seen) {
        var technique = shelf.all(ContentKind.TECHNIQUE).get(code);
        if (technique == null || !seen.add(code)) {
            return null;
        }
        if ("styling".equals(technique.top().text("purpose"))) {
            return code;
        }
        return technique.top().texts("after").stream()
                .map(before -> stylingUpTo(before, seen))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private void checkCriteria(List<Part> criteria) {
        var seen = new HashSet<String>();
        for (var criterion : criteria) {
            facts.checkTest(criterion);
            criterion.each("overrides").forEach(other -> checkOverride(criterion, other));
            var comparisons = FactCheck.COMPARISONS.stream().filter(criterion::has).toList();
            var fact = criterion.text("fact");
            if (fact != null && !seen.add(fact + comparisons)) {
                faults.add(
                        criterion,
                        "%s with %s a second time".formatted(fact, String.join(", ", comparisons)),
                        "each fact with each comparison once");
            }
        }
    }

    private void checkOverride(Part criterion, Part override) {
        override.each("species").forEach(one -> species.check(one, faults));
        var fact = FactCheck.fact(criterion);
        if (fact != null) {
            facts.checkComparisons(fact, override);
        }
        for (var comparison : FactCheck.COMPARISONS) {
            if (override.has(comparison) && !criterion.has(comparison)) {
                faults.add(
                        override.at(comparison),
                        comparison,
                        "the comparison of the criterion it stands for");
            }
        }
    }

    private void checkLoad(Part technique) {
        var stress = technique.number("stress");
        var days = technique.number("recoveryDays");
        if ((stress == 0 && days > 0) || (stress > 0 && days == 0)) {
            faults.add(
                    technique.at("recoveryDays"),
                    "stress %.0f over %.0f days".formatted(stress, days),
                    "stress and days of recovery both 0, or neither");
        }
    }

    /** Who inspects needs time for it, and the instructor's minutes lie within the student's. */
    private void checkMinutes(Part technique) {
        var instructor = technique.at("minutes").at("instructor");
        var student = technique.at("minutes").at("student");
        if (!instructor.isThere() || !student.isThere()) {
            return;
        }
        if (technique.at("irreversible").value().asBoolean(false) && instructor.number() == 0) {
            faults.add(
                    instructor, "0 minutes to inspect", "at least 1 where a step is irreversible");
        }
        if (student.number() < instructor.number()) {
            faults.add(
                    student,
                    student.value().asString(),
                    "at least the instructor's " + instructor.value().asString());
        }
    }

    private void checkDose(Part technique) {
        var dose = technique.at("dose");
        if (dose.number("typical") > dose.number("limit")) {
            faults.add(
                    dose.at("typical"),
                    dose.at("typical").value().toString(),
                    "at most the limit, " + dose.at("limit").value());
        }
        dose.each("limits")
                .forEach(limit -> limit.each("species").forEach(one -> species.check(one, faults)));
        var asks = technique.texts("asks");
        for (var kind : List.of("foliage", "root")) {
            var asked = asks.contains(kind + "Share");
            var taken = kind.equals(dose.text("kind"));
            if (asked != taken) {
                faults.add(
                        technique.at("asks"),
                        asked ? kind + "Share without a dose" : "no %sShare".formatted(kind),
                        "a report that states the share when the work takes one");
            }
        }
    }

    private void checkEffect(Part effect) {
        var fact = FactCheck.fact(effect);
        if (fact == null) {
            return;
        }
        if (fact.derived()) {
            faults.add(
                    effect.at("fact"),
                    "\"%s\", which is worked out from the record".formatted(fact.code()),
                    "a fact that somebody records");
        }
        if (FactCheck.unsettles(effect)) {
            checkUnsettled(effect, fact);
            return;
        }
        for (var name : List.of("is", "value")) {
            if (effect.has(name)) {
                facts.checkValue(fact, effect.at(name));
            }
        }
    }

    private void checkUnsettled(Part effect, Fact fact) {
        if (fact.scope() != Fact.Scope.TREE) {
            faults.add(
                    effect.at("fact"),
                    "\"%s\", read at a place on the tree".formatted(fact.code()),
                    "a fact of the tree as a whole");
        }
    }
}
