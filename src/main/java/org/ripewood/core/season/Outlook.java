package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** When something is likely to have come about. */
public sealed interface Outlook {

    /** Nothing is looked for beyond this many years; what lies behind it is not said. */
    int REACH_YEARS = 30;

    /** It has come about. */
    record Already() implements Outlook {
        @Override
        public Optional<LocalDate> dayAt(double probability, LocalDate from) {
            return Optional.of(from);
        }
    }

    /**
     * It is expected.
     *
     * @param earliest day by which it has come about in one case of ten
     * @param likely in every second case
     * @param latest in nine cases of ten; null when that lies beyond reach
     * @param likelySince the day from which on it has likely come about already, where that lies
     *     behind and nobody has looked since: measuring tells, no later day does; else null. The
     *     days before are then today
     */
    record Expected(
            LocalDate earliest,
            LocalDate likely,
            @Nullable LocalDate latest,
            @Nullable LocalDate likelySince)
            implements Outlook {

        private static final int LEAST_SKEW = 2;
        private static final double Z_OF_NINE_IN_TEN = 1.2815515655446004;

        public Expected {
            if (likely.isBefore(earliest) || (latest != null && latest.isBefore(likely))) {
                throw new IllegalArgumentException(
                        "earliest, likely and latest must follow each other, found %s, %s, %s"
                                .formatted(earliest, likely, latest));
            }
            if (likelySince != null && !likelySince.isBefore(likely)) {
                throw new IllegalArgumentException(
                        "what is likely so already has been since before today, found %s, %s"
                                .formatted(likelySince, likely));
            }
        }

        /** What lies ahead. */
        public Expected(LocalDate earliest, LocalDate likely, @Nullable LocalDate latest) {
            this(earliest, likely, latest, null);
        }

        /** A day that is sure. */
        public static Expected on(LocalDate day) {
            return new Expected(day, day, day);
        }

        private Expected orLater(Expected other) {
            var thisLatest = latest;
            var otherLatest = other.latest;
            var laterLikely = later(likely, other.likely);
            return new Expected(
                    later(earliest, other.earliest),
                    laterLikely,
                    thisLatest == null || otherLatest == null
                            ? null
                            : later(thisLatest, otherLatest),
                    laterSince(other, laterLikely));
        }

        /** Of several, all have likely come about when the last of them has. */
        private @Nullable LocalDate laterSince(Expected other, LocalDate laterLikely) {
            var one = likely.equals(laterLikely) ? likelySince : null;
            var another = other.likely.equals(laterLikely) ? other.likelySince : null;
            if (one == null || another == null) {
                return one == null ? another : one;
            }
            return later(one, another);
        }

        private static LocalDate later(LocalDate one, LocalDate other) {
            return one.isAfter(other) ? one : other;
        }

        /**
         * A normal curve on either side of the likely day, each as wide as its own tenth asks for.
         * Where the last tenth lies beyond reach, that side is as wide as the reach at least, and
         * at least {@value #LEAST_SKEW} times as wide as the other, since what is late is late by
         * more (common practice, no source); the last tenth itself is not said.
         */
        @Override
        public Optional<LocalDate> dayAt(double probability, LocalDate from) {
            double z = NormalQuantile.of(probability) / Z_OF_NINE_IN_TEN;
            var outer = z < 0 ? earliest : latest;
            if (outer == null) {
                if (z >= 1) {
                    return Optional.empty();
                }
                long early = ChronoUnit.DAYS.between(earliest, likely);
                outer = later(likely.plusDays(LEAST_SKEW * early), from.plusYears(REACH_YEARS));
            }
            long side = Math.abs(ChronoUnit.DAYS.between(likely, outer));
            var day = likely.plusDays(Math.round(z * side));
            return Optional.of(day.isBefore(from) ? from : day);
        }
    }

    /**
     * It cannot be said.
     *
     * @param because one sentence, with what would help
     */
    record Unsaid(String because) implements Outlook {
        public Unsaid {
            if (because.isBlank()) {
                throw new IllegalArgumentException("a reason is needed");
            }
        }

        @Override
        public Optional<LocalDate> dayAt(double probability, LocalDate from) {
            return Optional.empty();
        }
    }

    /**
     * The day by which it has come about with a probability, not before {@code from}; empty when
     * that cannot be said or lies beyond reach.
     *
     * @param probability above 0 and below 1
     */
    Optional<LocalDate> dayAt(double probability, LocalDate from);

    /**
     * When all of several things will have come about.
     *
     * <p>Tenth by tenth the latest of them: exact for things that come about together, and somewhat
     * early for things that do not depend on each other. Edge cases: nothing to wait for, already;
     * one that cannot be said leaves all unsaid, for the first such reason.
     */
    static Outlook allOf(Collection<Outlook> outlooks) {
        Expected latest = null;
        for (var outlook : outlooks) {
            if (outlook instanceof Unsaid) {
                return outlook;
            }
            if (outlook instanceof Expected expected) {
                latest = latest == null ? expected : latest.orLater(expected);
            }
        }
        return latest == null ? new Already() : latest;
    }
}
