package org.ripewood.routes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.SeasonOfYear;

/**
 * A tree's way to a goal stage, as people read it.
 *
 * @param goal code of the stage
 * @param latitudeDegrees of its site: where growing seasons begin
 * @param reached when the last step is likely to be done
 * @param steps still ahead, what comes first standing first
 * @param chain what usually decides when the goal is reached, first step first
 * @param waitings what time goes by for, longest first
 * @param assumed what had to be taken for granted
 * @param draws how many times the years were gone through
 */
public record RouteView(
        long treeId,
        LocalDate on,
        String contentRevision,
        String goal,
        String goalTitle,
        double latitudeDegrees,
        When reached,
        List<Step> steps,
        List<Link> chain,
        List<Waiting> waitings,
        List<Assumed> assumed,
        int draws) {

    public RouteView {
        steps = List.copyOf(steps);
        chain = List.copyOf(chain);
        waitings = List.copyOf(waitings);
        assumed = List.copyOf(assumed);
    }

    /**
     * When something is likely to be done. The days are what was counted; of years ahead no more
     * than the seasons is known, which is what people are told.
     *
     * @param already nothing is left to do; then there are no days
     * @param earliest in one case of ten; null when nothing can be said
     * @param likely in every second case; null when nothing can be said
     * @param latest in nine cases of ten; null when that is out of sight
     * @param assumed whether it hangs on something taken for granted: then it is not before {@code
     *     earliest}, and nothing is promised
     * @param seasons the three days as what is really known of them
     */
    public record When(
            boolean already,
            @Nullable LocalDate earliest,
            @Nullable LocalDate likely,
            @Nullable LocalDate latest,
            String sentence,
            boolean assumed,
            Seasons seasons) {

        /**
         * Seasons of a year, such as {@code "spring 2029"}; each null where its day is.
         *
         * @param earliest in one case of ten
         * @param likely in every second case
         * @param latest in nine cases of ten
         */
        public record Seasons(
                @Nullable String earliest, @Nullable String likely, @Nullable String latest) {

            /** Where nothing can be said, or nothing is left to be. */
            public static final Seasons NONE = new Seasons(null, null, null);

            static Seasons of(Outlook.Expected expected, double latitude) {
                var latest = expected.latest();
                return new Seasons(
                        SeasonOfYear.of(expected.earliest(), latitude).name(),
                        SeasonOfYear.of(expected.likely(), latitude).name(),
                        latest == null ? null : SeasonOfYear.of(latest, latitude).name());
            }
        }

        /** The same without words. */
        public Outlook outlook() {
            if (already) {
                return new Outlook.Already();
            }
            return earliest == null || likely == null
                    ? new Outlook.Unsaid(sentence)
                    : new Outlook.Expected(earliest, likely, latest);
        }
    }

    /**
     * A step on the way.
     *
     * @param season the growing season it is likely done in, such as 2027 or 2027/28; null when
     *     that cannot be said
     * @param seasons all growing seasons it may be done in, with their shares
     * @param critical share of the draws in which a delay of it delays the goal, 0 to 1
     * @param onChain whether it stands on the usual chain
     * @param waitsFor what decides its day most often; empty for nothing
     * @param assumed whether it, or a step before it, rests on something taken for granted
     */
    public record Step(
            String technique,
            String title,
            String stage,
            String stageTitle,
            When when,
            @Nullable String season,
            List<Season> seasons,
            double critical,
            boolean onChain,
            String waitsFor,
            boolean assumed) {

        public Step {
            seasons = List.copyOf(seasons);
        }
    }

    /**
     * A growing season a step may be done in.
     *
     * @param share of the draws, 0 to 1
     */
    public record Season(String name, LocalDate firstDay, double share) {}

    /**
     * One step of the chain.
     *
     * @param waitsFor what usually puts it where it is; empty for nothing
     */
    public record Link(String technique, String title, String waitsFor) {}

    /**
     * Time that goes by for one thing.
     *
     * @param meanDays over the draws that reach the goal
     * @param share of all the time to the goal, 0 to 1
     */
    public record Waiting(String what, long meanDays, double share, String sentence) {}

    /**
     * Something taken for granted.
     *
     * @param what the thing
     * @param onceLookedAt taken to turn out well once somebody looks; otherwise taken to be so from
     *     the next growing season on
     * @param because why nothing is known
     * @param titles of the steps that rest on it
     */
    public record Assumed(String what, boolean onceLookedAt, String because, List<String> titles) {

        public Assumed {
            titles = List.copyOf(titles);
        }
    }

    /** A stage and its steps. */
    public record Stage(String title, List<Step> steps) {}

    /** The steps by stage, in the order they are told. */
    public List<Stage> stages() {
        var byStage = new LinkedHashMap<String, List<Step>>();
        for (var step : steps) {
            byStage.computeIfAbsent(step.stageTitle(), any -> new ArrayList<>()).add(step);
        }
        return byStage.entrySet().stream()
                .map(entry -> new Stage(entry.getKey(), List.copyOf(entry.getValue())))
                .toList();
    }

    /** What holds the tree up longest; empty when nothing does. */
    public String longest() {
        return waitings.isEmpty() ? "" : waitings.get(0).what();
    }
}
