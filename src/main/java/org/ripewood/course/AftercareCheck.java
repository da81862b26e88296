package org.ripewood.course;

import java.util.HashSet;
import java.util.List;

/** What the schema cannot say of a technique's aftercare. */
final class AftercareCheck {

    private static final String STAGES = "[0-9]{2}-[0-9]{2}";

    private final FactCheck facts;
    private final Faults faults;

    AftercareCheck(FactCheck facts, Faults faults) {
        this.facts = facts;
        this.faults = faults;
    }

    void check(List<Part> aftercare) {
        var codes = new HashSet<String>();
        for (var care : aftercare) {
            var code = care.text("code");
            if (code != null && !codes.add(code)) {
                faults.add(
                        care.at("code"),
                        "\"%s\" a second time".formatted(code),
                        "each code once, since what people say of a task is kept under it");
            }
            care.each("onlyStages").forEach(this::checkRange);
            care.each("notStages").forEach(this::checkRange);
            checkFrost(care);
            checkEnd(care.at("endsWhen"));
        }
    }

    /** A tree's clock tells leaves and shoots; of flowers only those know who have looked. */
    private void checkRange(Part at) {
        SeasonCheck.checkRange(at, faults);
        var text = at.text();
        if (text != null && text.matches("[5-8].*")) {
            faults.add(
                    at,
                    "\"%s\", of flower and fruit".formatted(text),
                    "stages of leaves and shoots, by which aftercare goes");
        }
    }

    /** Where trees never rest there is no frost to guard against. */
    private void checkFrost(Part care) {
        if ("frost_guard".equals(care.text("kind"))
                && sound(care)
                && TechniqueBuilding.window(care).openWhereTreesNeverRest()) {
            faults.add(
                    care.at("kind"),
                    "frost_guard in stage 35, in which trees of the tropics always are",
                    "onlyStages or notStages that leave the middle of growth out");
        }
    }

    private static boolean sound(Part care) {
        return care.number("fromDay") >= 0
                && care.number("days") >= 1
                && (!care.has("waitDays") || care.number("waitDays") >= 0)
                && List.of("onlyStages", "notStages").stream()
                        .flatMap(name -> care.each(name).stream())
                        .allMatch(at -> at.text() != null && at.text().matches(STAGES));
    }

    private void checkEnd(Part end) {
        var fact = FactCheck.fact(end);
        if (fact != null && end.has("is")) {
            facts.checkValue(fact, end.at("is"));
        }
    }
}
