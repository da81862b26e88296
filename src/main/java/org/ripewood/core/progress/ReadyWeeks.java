package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many trees could do each technique, week by week: which lesson to teach when.
 *
 * <p>A tree counts for a week when on one of its seven days the technique's season is open and all
 * else will have come about by then: in one case of ten for {@code possible}, in every second for
 * {@code likely}, in nine of ten for {@code sure}. A skill that has not been shown does not count
 * against it, since the class may show it. Evidence that is good on the first day is taken to be
 * looked at again in time.
 *
 * <p>Limits: what is done meanwhile changes what can be done after it, and is not foreseen; work
 * that comes round again is not counted before it does; what nobody can say (something not looked
 * at, a step that comes first) is counted as {@code unsaid} and in no week.
 *
 * @param from first day of the first week
 * @param weeks how many
 * @param rows by technique, in the order given, without those that no tree needs
 */
public record ReadyWeeks(LocalDate from, int weeks, List<Row> rows) {

    public static final int MOST_WEEKS = 104;

    private static final int DAYS = 7;

    /**
     * One technique.
     *
     * @param weeks one for each week
     * @param unsaid trees that need it and of which nobody can say when
     */
    public record Row(String technique, List<Week> weeks, int unsaid) {
        public Row {
            weeks = List.copyOf(weeks);
        }

        /** The week in which most trees likely could, the first of equals; −1 when none could. */
        public int best() {
            int best = -1;
            for (int week = 0; week < weeks.size(); week++) {
                int likely = weeks.get(week).likely();
                if (likely > 0 && (best < 0 || likely > weeks.get(best).likely())) {
                    best = week;
                }
            }
            return best;
        }
    }

    /** Trees: in one case of ten, in every second, in nine of ten. */
    public record Week(int possible, int likely, int sure) {

        private static final Week NONE = new Week(0, 0, 0);

        private Week plus(boolean possibly, boolean likelyToo, boolean surely) {
            return new Week(
                    possible + (possibly ? 1 : 0),
                    likely + (likelyToo ? 1 : 0),
                    sure + (surely ? 1 : 0));
        }
    }

    public ReadyWeeks {
        rows = List.copyOf(rows);
    }

    /** Counts the weeks of trees one after the other; for one thread. */
    public static final class Count {

        private final LocalDate from;
        private final int weeks;
        private final List<String> techniques;
        private final Map<String, Week[]> counted = new TreeMap<>();
        private final Map<String, Integer> unsaid = new TreeMap<>();

        /**
         * @param from first day, not before the day the openings were asked for
         * @param weeks 1 to {@link #MOST_WEEKS}
         * @param techniques in the order in which they are told
         * @throws IllegalArgumentException for other numbers of weeks
         */
        public Count(LocalDate from, int weeks, Collection<String> techniques) {
            if (weeks < 1 || weeks > MOST_WEEKS) {
                throw new IllegalArgumentException(
                        "from 1 to %d weeks are counted, found %d".formatted(MOST_WEEKS, weeks));
            }
            this.from = from;
            this.weeks = weeks;
            this.techniques = List.copyOf(techniques);
        }

        /** Counts one tree. */
        public void add(Openings tree) {
            for (var ahead : tree.ahead(from, weeks * DAYS)) {
                add(ahead);
            }
        }

        private void add(Openings.Ahead ahead) {
            var clear = ahead.clear();
            var row = counted.computeIfAbsent(ahead.technique(), any -> none());
            if (clear == null) {
                unsaid.merge(ahead.technique(), 1, Integer::sum);
                return;
            }
            for (int week = 0; week < weeks; week++) {
                int last = lastOpen(ahead, week);
                row[week] =
                        row[week].plus(
                                last >= clear.earliest(),
                                last >= clear.likely(),
                                last >= clear.latest());
            }
        }

        /** The last day of a week with an open season, in days from the first; −1 for none. */
        private static int lastOpen(Openings.Ahead ahead, int week) {
            int last = ahead.open().previousSetBit(week * DAYS + DAYS - 1);
            return last >= week * DAYS ? last : -1;
        }

        private Week[] none() {
            var none = new Week[weeks];
            Arrays.fill(none, Week.NONE);
            return none;
        }

        /** What has been counted. */
        public ReadyWeeks counted() {
            return new ReadyWeeks(
                    from,
                    weeks,
                    techniques.stream()
                            .filter(counted::containsKey)
                            .map(
                                    technique ->
                                            new Row(
                                                    technique,
                                                    List.of(counted.get(technique)),
                                                    unsaid.getOrDefault(technique, 0)))
                            .toList());
        }
    }
}
