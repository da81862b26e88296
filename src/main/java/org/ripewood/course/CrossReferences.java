package org.ripewood.course;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.problems.Suggestion;

/** Holds the content files against each other, where a schema sees only one of them. */
final class CrossReferences {

    /** Asks in an address for all techniques of styling at once. */
    private static final String STYLING = "styling";

    private static final int MOST_WORDS_OF_A_FACT = 3;
    private static final int MOST_WORDS_OF_A_TECHNIQUE = 4;

    private final ContentDocuments shelf;
    private final Faults faults;

    CrossReferences(ContentDocuments shelf, Faults faults) {
        this.shelf = shelf;
        this.faults = faults;
    }

    void check() {
        checkCodesOnce(ContentKind.GROUPS, "groups");
        checkCodesOnce(ContentKind.STAGES, "stages");
        checkCodesOnce(ContentKind.FACTS, "facts");
        checkCodesOnce(ContentKind.WORKS, "works");
        checkStageOrder();
        checkFacts();
        checkFileNames();
        var species = new Codes("species", shelf.codes(ContentKind.SPECIES));
        var techniques = new Codes("technique", shelf.codes(ContentKind.TECHNIQUE));
        checkWorks(techniques);
        var works = new Codes("group of work", worksKnown());
        shelf.all(ContentKind.TECHNIQUE).values().forEach(one -> checkWork(one.top(), works));
        var speciesCheck = new SpeciesCheck(faults);
        shelf.all(ContentKind.SPECIES).values().forEach(one -> speciesCheck.check(one.top()));
        var techniqueCheck = new TechniqueCheck(shelf, species, techniques, faults);
        shelf.all(ContentKind.TECHNIQUE).values().forEach(one -> techniqueCheck.check(one.top()));
        shelf.all(ContentKind.STAGES)
                .values()
                .forEach(one -> techniqueCheck.checkStages(one.top()));
        new ClockCheck(shelf, faults).check();
        checkDurations(species, techniques);
        TechniqueOrder.of(shelf).refuseCircles(faults);
        new LessonCheck(shelf, techniques, faults).check();
        var lessons = new Codes("lesson", shelf.codes(ContentKind.LESSON));
        checkGlossary(techniques, lessons);
        var rubricCheck = new RubricCheck(lessons, faults);
        shelf.all(ContentKind.RUBRIC).values().forEach(one -> rubricCheck.check(one.top()));
        var caseCheck = new CaseCheck(shelf, faults);
        shelf.all(ContentKind.CLIMATE).values().forEach(one -> caseCheck.checkClimate(one.top()));
        shelf.all(ContentKind.CASES).values().forEach(one -> caseCheck.check(one.top()));
    }

    private void checkCodesOnce(ContentKind kind, String list) {
        var seen = new HashSet<String>();
        for (var entry : shelf.entries(kind, list)) {
            var code = entry.text("code");
            if (code != null && !seen.add(code)) {
                faults.add(
                        entry.at("code"), "\"%s\" a second time".formatted(code), "each code once");
            }
        }
    }

    private void checkStageOrder() {
        var seen = new HashSet<Double>();
        for (var stage : shelf.entries(ContentKind.STAGES, "stages")) {
            var order = stage.number("order");
            if (!Double.isNaN(order) && !seen.add(order)) {
                faults.add(
                        stage.at("order"),
                        "%.0f a second time".formatted(order),
                        "each stage in a place of its own");
            }
        }
    }

    private Set<String> worksKnown() {
        var known = new HashSet<String>();
        shelf.entries(ContentKind.WORKS, "works")
                .forEach(work -> known.add(String.valueOf(work.text("code"))));
        return known;
    }

    /** Every technique belongs to one group of work, and care to none. */
    private void checkWork(Part technique, Codes works) {
        works.check(technique.at("work"), faults);
        if ("care".equals(technique.text("purpose"))) {
            if (technique.has("work")) {
                faults.add(technique.at("work"), "\"work\" for care", "none, as care has no cell");
            }
            return;
        }
        checkShort(technique, MOST_WORDS_OF_A_TECHNIQUE);
        if (!technique.has("work")) {
            faults.add(technique, "no \"work\"", "the code of a group of work");
        }
    }

    /** A group of work is asked for in an address as a technique is. */
    private void checkWorks(Codes techniques) {
        if (shelf.all(ContentKind.WORKS).isEmpty()) {
            faults.add(ContentKind.WORKS.pattern(), 0, "no such file", "the groups of work");
        }
        for (var work : shelf.entries(ContentKind.WORKS, "works")) {
            var code = work.text("code");
            if (code != null && (techniques.known().contains(code) || code.equals(STYLING))) {
                faults.add(
                        work.at("code"),
                        "\"%s\", which stands for something else".formatted(code),
                        "a code that no technique has, and not \"%s\"".formatted(STYLING));
            }
        }
    }

    private void checkFacts() {
        var told = new HashSet<Fact>();
        for (var entry : shelf.entries(ContentKind.FACTS, "facts")) {
            checkShort(entry, MOST_WORDS_OF_A_FACT);
            Fact.find(String.valueOf(entry.text("code")))
                    .ifPresent(
                            fact -> {
                                told.add(fact);
                                checkUnit(entry.at("unit"), fact);
                            });
        }
        var untold = new ArrayList<String>();
        for (var fact : Fact.values()) {
            if (!told.contains(fact)) {
                untold.add(fact.code());
            }
        }
        if (!untold.isEmpty() && !shelf.all(ContentKind.FACTS).isEmpty()) {
            faults.add(
                    ContentKind.FACTS.pattern(),
                    0,
                    "no text for " + String.join(", ", untold),
                    "one text for each fact");
        }
    }

    /** A title of many words has no room in a cell of the readiness sheet. */
    private void checkShort(Part entry, int most) {
        var title = entry.text("title");
        if (title == null || entry.has("short")) {
            return;
        }
        int words = title.strip().split("\\s+", -1).length;
        if (words > most) {
            faults.add(
                    entry.at("title"),
                    "a title of %d words and no \"short\"".formatted(words),
                    "\"short\" with %d words at most".formatted(most));
        }
    }

    private void checkUnit(Part unit, Fact fact) {
        var found = unit.text();
        if (found != null && !found.equals(fact.unit())) {
            faults.add(
                    unit,
                    "\"%s\"".formatted(found),
                    "\"%s\", in which the rules reckon".formatted(fact.unit()));
        }
    }

    /** Every word of the glossary stands for one thing, the other words for it among them. */
    private void checkGlossary(Codes techniques, Codes lessons) {
        var seen = new HashSet<String>();
        for (var term : shelf.entries(ContentKind.GLOSSARY, "terms")) {
            checkWordOnce(term.at("word"), seen);
            term.each("also").forEach(word -> checkWordOnce(word, seen));
            term.each("techniques").forEach(code -> techniques.check(code, faults));
            term.each("lessons").forEach(code -> lessons.check(code, faults));
        }
    }

    private void checkWordOnce(Part at, Set<String> seen) {
        var word = at.text();
        if (word != null && !seen.add(word.toLowerCase(Locale.ROOT))) {
            faults.add(at, "\"%s\" a second time".formatted(word), "each word once");
        }
    }

    /** How long things take, held against the techniques and the species there are. */
    private void checkDurations(Codes species, Codes techniques) {
        shelf.entries(ContentKind.DURATIONS, "changes")
                .forEach(entry -> checkChange(entry, species, techniques));
    }

    private void checkChange(Part entry, Codes species, Codes techniques) {
        entry.each("after").forEach(code -> techniques.check(code, faults));
        entry.each("species").forEach(code -> species.check(code, faults));
        var fact = FactCheck.fact(entry);
        if (fact != null && entry.has("each") && fact.kind() != Fact.Kind.NUMBER) {
            faults.add(
                    entry.at("each"),
                    "each for %s, which is no number".formatted(fact.code()),
                    "no each, since it is so or not");
        }
        checkOrder(entry.at("seasons"));
    }

    private void checkOrder(Part seasons) {
        double low = seasons.number("low");
        double usual = seasons.number("usual");
        double high = seasons.number("high");
        if (low > usual || usual > high) {
            faults.add(
                    seasons,
                    "low %s, usual %s, high %s".formatted(low, usual, high),
                    "low at most usual, and usual at most high");
        }
    }

    private void checkFileNames() {
        for (var kind : ContentKind.values()) {
            if (!kind.single()) {
                shelf.all(kind).forEach((name, one) -> checkFileName(name, one.top().at("code")));
            }
        }
    }

    private void checkFileName(String name, Part code) {
        var found = code.text();
        if (found != null && !found.equals(name)) {
            faults.add(
                    code,
                    "\"%s\"".formatted(found),
                    "\"%s\", as the file is called".formatted(name));
        }
    }

    /** The groups a species belongs to, its habit among them. */
    static Set<String> groupsOf(Part species) {
        var groups = new HashSet<String>(species.texts("groups"));
        var habit = species.text("habit");
        if (habit != null) {
            groups.add(habit);
        }
        return groups;
    }

    /** Whether groups and species named by a rule hold a species. */
    static boolean hold(Part rule, String code, Collection<String> groups) {
        List<String> wanted = rule.texts("groups");
        return rule.texts("species").contains(code) || wanted.stream().anyMatch(groups::contains);
    }

    /**
     * The codes of one kind that other files may name.
     *
     * @param what the kind, as said to people
     */
    record Codes(String what, Set<String> known) {

        void check(Part at, Faults faults) {
            var code = at.text();
            if (code != null) {
                check(at, code, faults);
            }
        }

        /** Checks a code that is a part of the text. */
        void check(Part at, String code, Faults faults) {
            if (!known.contains(code)) {
                faults.add(
                        at,
                        "\"%s\"".formatted(code),
                        "the code of a %s.%s".formatted(what, Suggestion.maybe(known, code)));
            }
        }
    }
}
