package org.ripewood.course;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.CareWindow;
import org.ripewood.core.season.LookRhythm;

/**
 * A technique: what the engine needs ({@code rule}) and what people read.
 *
 * @param goesAfter techniques that go first on a route, where the tree needs them too; nobody is
 *     held by it
 * @param effects what the work makes true
 * @param unsettles facts it changes in a way nobody has measured: what was seen of them up to the
 *     day of the work says nothing of the tree since
 */
public record Technique(
        TechniqueRule rule,
        String title,
        String stage,
        String summary,
        String teaching,
        List<String> lessons,
        @Nullable String startsClock,
        int studentMinutes,
        int instructorMinutes,
        boolean irreversible,
        List<Ask> asks,
        List<String> goesAfter,
        List<Effect> effects,
        List<Fact> unsettles,
        List<String> tools,
        List<String> materials,
        List<Take> takes,
        List<Hazard> hazards,
        List<Aftercare> aftercare,
        List<String> evidence,
        String source) {

    /** What a report must state. */
    public enum Ask {
        FOLIAGE_SHARE,
        ROOT_SHARE,
        WOUND,
        CONTAINER,
        MEASURES
    }

    /** A fact that becomes true at sign-off. */
    public record Effect(Fact fact, Value value) {}

    /**
     * How much of the stock the work on one tree takes.
     *
     * @param item its name in stock; {@link #SUBSTRATE} for all substrates together
     * @param perContainerLitre whether the amount is for each litre of the tree's container
     */
    public record Take(String item, double amount, String unit, boolean perContainerLitre) {
        public static final String SUBSTRATE = "substrate";
    }

    /** A caution: signal word, hazard, how to avoid it. */
    public record Hazard(String signal, String hazard, String avoid) {}

    /**
     * Care after the work, counted from the day it was done.
     *
     * @param code names it within the technique, whatever its words become
     * @param rhythm how often it is to be done while its days run; null for once
     * @param endsWhen what, once seen, ends it for good; null when only its days do
     */
    public record Aftercare(
            String code,
            String task,
            Kind kind,
            CareWindow window,
            @Nullable LookRhythm rhythm,
            @Nullable Effect endsWhen) {

        /** What sort of care it is. */
        public enum Kind {
            SHADE,
            NO_FEED,
            FROST_GUARD,
            WIRE_CHECK,
            MEASURE,
            OTHER
        }

        public int fromDay() {
            return window.fromDay();
        }

        public int days() {
            return window.days();
        }
    }

    public String code() {
        return rule.code();
    }
}
