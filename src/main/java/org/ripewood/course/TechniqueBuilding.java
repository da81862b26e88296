package org.ripewood.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.CareWindow;
import org.ripewood.core.season.LookRhythm;
import org.ripewood.core.season.StageRange;
import org.ripewood.course.Technique.Aftercare;

/** Makes a technique of its file, with its care afterwards. */
final class TechniqueBuilding {

    private final Map<String, Integer> stageOrders;
    private final Map<Fact, FactText> facts;
    private final List<Criterion> ofAllStyling;

    /**
     * @param ofAllStyling criteria that every technique of styling has besides its own
     */
    TechniqueBuilding(
            Map<String, Integer> stageOrders,
            Map<Fact, FactText> facts,
            List<Criterion> ofAllStyling) {
        this.stageOrders = stageOrders;
        this.facts = facts;
        this.ofAllStyling = ofAllStyling;
    }

    Technique technique(Part technique) {
        var stage = technique.requireText("stage");
        var minutes = technique.at("minutes");
        return new Technique(
                rule(technique, stageOrders.getOrDefault(stage, 0)),
                technique.requireText("title"),
                stage,
                technique.requireText("summary"),
                technique.requireText("teaching"),
                technique.texts("lessons"),
                technique.text("startsClock"),
                minutes.requireInt("student"),
                minutes.requireInt("instructor"),
                technique.at("irreversible").value().booleanValue(),
                technique.texts("asks").stream().map(TechniqueBuilding::ask).toList(),
                technique.texts("goesAfter"),
                technique.each("effects").stream()
                        .filter(effect -> !FactCheck.unsettles(effect))
                        .map(TechniqueBuilding::effect)
                        .toList(),
                technique.each("effects").stream()
                        .filter(FactCheck::unsettles)
                        .map(effect -> Objects.requireNonNull(FactCheck.fact(effect)))
                        .toList(),
                technique.texts("tools"),
                technique.texts("materials"),
                technique.each("takes").stream().map(TechniqueBuilding::take).toList(),
                technique.each("hazards").stream().map(TechniqueBuilding::hazard).toList(),
                technique.each("aftercare").stream().map(TechniqueBuilding::aftercare).toList(),
                technique.texts("evidence"),
                technique.requireText("source"));
    }

    private TechniqueRule rule(Part technique, int stageOrder) {
        var appliesTo = technique.at("appliesTo");
        var needed = technique.at("neededWhen");
        var repeat = technique.at("repeat");
        return new TechniqueRule(
                technique.requireText("code"),
                stageOrder,
                purpose(technique.text("purpose")),
                Set.copyOf(appliesTo.texts("species")),
                Set.copyOf(appliesTo.texts("groups")),
                needed.isThere() ? RuleBuilding.condition(needed) : null,
                repeat.isThere() ? (Integer) repeat.requireInt("afterDays") : null,
                technique.texts("after"),
                criteria(technique),
                RuleBuilding.season(technique.at("season")),
                technique.number("stress"),
                technique.requireInt("recoveryDays"),
                technique.requireInt("quietDaysBefore"),
                dose(technique.at("dose")),
                technique.text("skillLesson"));
    }

    /** Its own; for styling also those of all styling, but for what it says itself. */
    private List<Criterion> criteria(Part technique) {
        var criteria =
                new ArrayList<>(
                        technique.each("criteria").stream()
                                .map(criterion -> RuleBuilding.criterion(criterion, facts))
                                .toList());
        if (purpose(technique.text("purpose")) == TechniqueRule.Purpose.STYLING) {
            var own = criteria.stream().map(Criterion::key).collect(Collectors.toSet());
            ofAllStyling.stream()
                    .filter(criterion -> !own.contains(criterion.key()))
                    .forEach(criteria::add);
        }
        return criteria;
    }

    private static TechniqueRule.Purpose purpose(@Nullable String purpose) {
        return purpose == null
                ? TechniqueRule.Purpose.OTHER
                : TechniqueRule.Purpose.valueOf(purpose.toUpperCase(Locale.ROOT));
    }

    private static @Nullable DoseRule dose(Part dose) {
        if (!dose.isThere()) {
            return null;
        }
        var kind =
                dose.requireText("kind").equals("root")
                        ? DoseRule.Kind.ROOT
                        : DoseRule.Kind.FOLIAGE;
        return new DoseRule(
                kind,
                dose.number("typical"),
                dose.number("limit"),
                dose.each("limits").stream().map(TechniqueBuilding::limit).toList(),
                dose.has("startsAnew"));
    }

    private static DoseRule.Limit limit(Part limit) {
        return new DoseRule.Limit(
                Set.copyOf(limit.texts("species")),
                Set.copyOf(limit.texts("groups")),
                limit.number("limit"),
                limit.has("fromVigour") ? limit.number("fromVigour") : 0);
    }

    private static Technique.Ask ask(String text) {
        return Arrays.stream(Technique.Ask.values())
                .filter(ask -> ask.name().replace("_", "").equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing to ask called " + text));
    }

    static Technique.Effect effect(Part effect) {
        var fact = Fact.find(effect.requireText("fact")).orElseThrow();
        Value value = FactCheck.value(effect.at(effect.has("is") ? "is" : "value"));
        return new Technique.Effect(fact, Objects.requireNonNull(value));
    }

    private static Technique.Take take(Part take) {
        return new Technique.Take(
                take.requireText("item"),
                take.number("amount"),
                take.requireText("unit"),
                take.has("perContainerLitre")
                        && take.at("perContainerLitre").value().booleanValue());
    }

    private static Technique.Hazard hazard(Part hazard) {
        return new Technique.Hazard(
                hazard.requireText("signal"),
                hazard.requireText("hazard"),
                hazard.requireText("avoid"));
    }

    private static Aftercare aftercare(Part care) {
        var kind = care.text("kind");
        var ends = care.at("endsWhen");
        return new Aftercare(
                care.requireText("code"),
                care.requireText("task"),
                kind == null
                        ? Aftercare.Kind.OTHER
                        : Aftercare.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
                window(care),
                rhythm(care),
                ends.isThere() ? effect(ends) : null);
    }

    static CareWindow window(Part care) {
        return new CareWindow(
                care.requireInt("fromDay"),
                care.requireInt("days"),
                care.has("waitDays") ? care.requireInt("waitDays") : CareWindow.A_YEAR_ROUND,
                stages(care, "onlyStages"),
                stages(care, "notStages"));
    }

    private static @Nullable LookRhythm rhythm(Part care) {
        int inGrowth = care.has("everyDaysInGrowth") ? care.requireInt("everyDaysInGrowth") : 0;
        int atRest = care.has("everyDaysAtRest") ? care.requireInt("everyDaysAtRest") : 0;
        return inGrowth == 0 && atRest == 0 ? null : new LookRhythm(inGrowth, atRest);
    }

    private static List<StageRange> stages(Part care, String name) {
        return care.texts(name).stream().map(StageRange::parse).toList();
    }
}
