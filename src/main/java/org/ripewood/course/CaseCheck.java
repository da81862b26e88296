package org.ripewood.course;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CrossReferences.Codes;

/** What the schema cannot say of judgement cases: what they name has to be there, and to fit. */
final class CaseCheck {

    private static final String OR = " or ";

    private final Codes species;
    private final Codes techniques;
    private final Codes lessons;
    private final Codes climates;
    private final Codes facts;
    private final Codes stages;
    private final Codes reasons;
    private final FactCheck values;
    private final Faults faults;

    CaseCheck(ContentDocuments shelf, Faults faults) {
        this.species = new Codes("species", shelf.codes(ContentKind.SPECIES));
        this.techniques = new Codes("technique", shelf.codes(ContentKind.TECHNIQUE));
        this.lessons = new Codes("lesson", shelf.codes(ContentKind.LESSON));
        this.climates = new Codes("climate", shelf.codes(ContentKind.CLIMATE));
        this.stages =
                new Codes(
                        "stage",
                        shelf.entries(ContentKind.STAGES, "stages").stream()
                                .flatMap(stage -> Stream.ofNullable(stage.text("code")))
                                .collect(Collectors.toSet()));
        this.facts = new Codes("fact", factCodes());
        this.reasons = new Codes("reason", reasonCodes(techniques.known()));
        this.values = new FactCheck(faults);
        this.faults = faults;
    }

    private static Set<String> factCodes() {
        return Arrays.stream(Fact.values()).map(Fact::code).collect(Collectors.toSet());
    }

    private static Set<String> reasonCodes(Set<String> techniques) {
        var codes = new HashSet<>(factCodes());
        codes.addAll(techniques);
        codes.addAll(JudgementCase.OTHER_REASONS);
        return codes;
    }

    /** The reasons of an entry, of which one is enough. */
    static Set<String> alternatives(String entry) {
        return new LinkedHashSet<>(List.of(entry.split(OR, -1)));
    }

    /** Checks a climate. */
    void checkClimate(Part climate) {
        var minima = climate.each("minCelsius");
        var maxima = climate.each("maxCelsius");
        for (int month = 0; month < Math.min(minima.size(), maxima.size()); month++) {
            if (minima.get(month).number() > maxima.get(month).number()) {
                faults.add(
                        minima.get(month),
                        "%s at night and %s by day in month %d"
                                .formatted(
                                        minima.get(month).value(),
                                        maxima.get(month).value(),
                                        month + 1),
                        "no night warmer than the day");
            }
        }
    }

    /** Checks the cases of a topic. */
    void check(Part topic) {
        var common = topic.at("tree");
        checkTree(common);
        var names = new HashSet<String>();
        for (var one : topic.each("cases")) {
            var name = one.text("name");
            if (name != null && !names.add(name)) {
                faults.add(
                        one.at("name"), "\"%s\" a second time".formatted(name), "each name once");
            }
            checkCase(one, common);
        }
    }

    private void checkCase(Part one, Part common) {
        checkTree(one);
        species.check(one.at("species"), faults);
        techniques.check(one.at("technique"), faults);
        checkDay(one.at("day"));
        if (!one.has("climate") && !common.has("climate")) {
            faults.add(one, "no climate", "the code of a climate, here or at the topic's tree");
        }
        one.each("unknown").forEach(code -> facts.check(code, faults));
        one.each("stages").forEach(stage -> stages.check(stage, faults));
        one.each("against").forEach(this::checkReason);
        one.each("notAgainst").forEach(this::checkReason);
        if (one.has("against") && one.texts("verdicts").equals(List.of("READY"))) {
            faults.add(
                    one.at("against"),
                    "reasons against what is to be READY",
                    "no reasons, or another verdict");
        }
    }

    private void checkDay(Part day) {
        var text = day.text();
        if (text == null || !text.matches("\\d{2}-\\d{2}")) {
            return;
        }
        try {
            MonthDay.parse("--" + text);
        } catch (DateTimeException e) {
            faults.add(day, "\"%s\"".formatted(text), "a day of the year, such as 03-15");
        }
    }

    private void checkReason(Part reason) {
        var text = reason.text();
        if (text == null) {
            return;
        }
        for (var name : alternatives(text)) {
            reasons.check(reason, name, faults);
        }
    }

    private void checkTree(Part tree) {
        climates.check(tree.at("climate"), faults);
        tree.each("known").forEach(this::checkKnown);
        tree.each("wounds").forEach(this::checkWound);
        tree.each("skills").forEach(lesson -> lessons.check(lesson, faults));
        for (var list : List.of("signedOff", "works")) {
            tree.each(list).forEach(done -> techniques.check(done.at("technique"), faults));
        }
    }

    private void checkKnown(Part known) {
        facts.check(known.at("fact"), faults);
        var fact = FactCheck.fact(known);
        if (fact == null) {
            return;
        }
        var told = unseen(fact);
        if (told != null) {
            faults.add(known.at("fact"), "\"%s\"".formatted(fact.code()), told);
        }
        values.checkValue(fact, known.at("is"));
    }

    /** Why nobody sees a fact by itself; null when somebody does. */
    private static @Nullable String unseen(Fact fact) {
        if (fact.recordable()) {
            return switch (fact.scope()) {
                case TREE -> null;
                case HEIGHT -> "a fact of the tree as a whole; diameters stand in profile";
                case WOUND -> "a fact of the tree as a whole; openings stand in wounds";
                case BRANCH -> "a fact of the tree as a whole; branches stand in branches";
            };
        }
        return "what somebody sees or measures; this is worked out from profile, wounds, branches,"
                + " container and works";
    }

    private void checkWound(Part wound) {
        var made = wound.number("madeDaysAgo");
        for (var look : wound.each("looks")) {
            if (look.number("daysAgo") > made) {
                faults.add(
                        look.at("daysAgo"),
                        "a reading %s days ago".formatted(look.at("daysAgo").value()),
                        "no reading before the wound was made");
            }
        }
    }
}
