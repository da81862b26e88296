package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
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
     */
    record Expected(LocalDate earliest, LocalDate likely, @Nullable LocalDate latest)
            implements Outlook {

        private static final double Z_OF_NINE_IN_TEN = 1.2815515655446004;

        public Expected {
            if (likely.isBefore(earliest) || (latest != null && latest.isBefore(likely))) {
                throw new IllegalArgumentException(
                        "earliest, likely and latest must follow each other, found %s, %s, %s"
                                .formatted(earliest, likely, latest));
            }
        }

        /** A day that is sure. */
        public static Expected on(LocalDate day) {
            return new Expected(day, day, day);
        }

        /**
         * A normal curve on either side of the likely day, each as wide as its own tenth asks for.
         */
        @Override
        public Optional<LocalDate> dayAt(double probability, LocalDate from) {
            double z = NormalQuantile.of(probability) / Z_OF_NINE_IN_TEN;
            var outer = z < 0 ? earliest : latest;
            if (outer == null) {
                return Optional.empty();
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
}
