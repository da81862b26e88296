package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One reason behind a verdict; a verdict carries all of its reasons, met ones too. */
public sealed interface Reason {

    /** Whether it speaks for going on: met, not met, or not known. */
    Truth truth();

    /** Whether an instructor may let it pass. */
    Strength strength();

    /** Names the reason within its technique, for waivers and stored decisions. */
    String key();

    /** How near: 0 nothing of it, 1 met. */
    double howFar();

    /** How the evidence for a criterion stands. */
    enum Look {
        MET(Truth.YES),
        NOT_MET(Truth.NO),
        /** Nobody has looked. */
        MISSING(Truth.UNKNOWN),
        /** Looked at, too long ago. */
        STALE(Truth.UNKNOWN),
        /** To be looked at when the work begins. */
        ON_THE_DAY(Truth.YES),
        /** A student's own evidence where an instructor's eye is asked for. */
        PROVISIONAL(Truth.UNKNOWN);

        private final Truth truth;

        Look(Truth truth) {
            this.truth = truth;
        }

        /** Whether it speaks for going on. */
        public Truth truth() {
            return truth;
        }
    }

    /** A criterion on a fact; the key is the criterion's. */
    record OfCriterion(
            String key,
            Criterion criterion,
            Requirement required,
            Look look,
            @Nullable Evidence evidence,
            double howFar)
            implements Reason {
        @Override
        public Truth truth() {
            return look.truth();
        }

        @Override
        public Strength strength() {
            return criterion.strength();
        }
    }

    /** Whether the tree needs the technique; the facts asked for that nobody has looked at. */
    record OfNeed(Truth truth, List<Fact> missing) implements Reason {
        @Override
        public Strength strength() {
            return Strength.SHOULD;
        }

        @Override
        public String key() {
            return "needed";
        }

        @Override
        public double howFar() {
            return truth == Truth.YES ? 1 : 0;
        }
    }

    /** A technique to be signed off first. */
    record OfOrder(String technique, Truth truth, String key) implements Reason {
        public OfOrder(String technique, Truth truth) {
            this(technique, truth, "after." + technique);
        }

        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public double howFar() {
            return truth == Truth.YES ? 1 : 0;
        }
    }

    /** Work on the material that the tree still needs, while nothing is styled. */
    record OfDevelopment(String technique, String key) implements Reason {
        public OfDevelopment(String technique) {
            this(technique, "needs." + technique);
        }

        @Override
        public Truth truth() {
            return Truth.NO;
        }

        @Override
        public Strength strength() {
            return Strength.SHOULD;
        }

        @Override
        public double howFar() {
            return 0;
        }
    }

    /** Load left from earlier work and added by this one, against what the vigour allows. */
    record OfLoad(double left, double added, double budget, Truth truth) implements Reason {

        /** Whether the tree is too weak for the work, however long it rests. */
        public boolean asksForStrength() {
            return truth == Truth.NO && added > budget;
        }

        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public String key() {
            return "load";
        }

        @Override
        public double howFar() {
            return truth == Truth.YES ? 1 : truth == Truth.NO ? budget / (left + added) : 0;
        }
    }

    /**
     * Days of quiet asked for after heavy work.
     *
     * @param over whether it has been quiet long enough, {@link WorkLedger#quietFrom}
     */
    record OfQuiet(int daysSinceHeavy, int required, boolean over) implements Reason {
        @Override
        public Truth truth() {
            return Truth.of(over);
        }

        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public String key() {
            return "quiet";
        }

        @Override
        public double howFar() {
            return over ? 1 : Math.min(1, (double) daysSinceHeavy / required);
        }
    }

    /** One heavy work in a growing season. */
    record OfHeavy(int heavyThisSeason) implements Reason {
        @Override
        public Truth truth() {
            return Truth.of(heavyThisSeason == 0);
        }

        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public String key() {
            return "heavy";
        }

        @Override
        public double howFar() {
            return heavyThisSeason == 0 ? 1 : 0;
        }
    }

    /** Share taken this season and planned now, against the limit. */
    record OfDose(DoseRule.Kind kind, double taken, double planned, double limit)
            implements Reason {

        /** Shares are told in whole per cents; a thousandth is not a breach. */
        private static final double SLACK = 1e-3;

        @Override
        public Truth truth() {
            return Truth.of(taken + planned <= limit + SLACK);
        }

        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public String key() {
            return "dose";
        }

        @Override
        public double howFar() {
            return truth() == Truth.YES ? 1 : limit / (taken + planned);
        }
    }

    /** The skill the student must have shown. */
    record OfSkill(String lesson, boolean shown) implements Reason {
        @Override
        public Truth truth() {
            return Truth.of(shown);
        }

        @Override
        public Strength strength() {
            return Strength.SHOULD;
        }

        @Override
        public String key() {
            return "skill";
        }

        @Override
        public double howFar() {
            return shown ? 1 : 0;
        }
    }

    /** The growth stage against the window; why it is closed is worked out when it is read. */
    final class OfSeason implements Reason {

        /** Why a season is closed, and when it opens. */
        interface Closed {
            @Nullable String because();

            @Nullable LocalDate opensOn();
        }

        private record Said(@Nullable String because, @Nullable LocalDate opensOn)
                implements Closed {}

        private final int stage;
        private final SeasonRule rule;
        private final Truth truth;
        private final Closed closed;

        OfSeason(int stage, SeasonRule rule, Truth truth, Closed closed) {
            this.stage = stage;
            this.rule = rule;
            this.truth = truth;
            this.closed = closed;
        }

        public OfSeason(
                int stage,
                SeasonRule rule,
                @Nullable String closedBecause,
                @Nullable LocalDate opensOn,
                Truth truth) {
            this(stage, rule, truth, new Said(closedBecause, opensOn));
        }

        public int stage() {
            return stage;
        }

        public SeasonRule rule() {
            return rule;
        }

        /** Why an otherwise open stage is to be avoided; null when it is not. */
        public @Nullable String closedBecause() {
            return closed.because();
        }

        /**
         * First day from the day asked for on which the window is open; null when that was not
         * asked or does not happen within thirteen months.
         */
        public @Nullable LocalDate opensOn() {
            return closed.opensOn();
        }

        @Override
        public Truth truth() {
            return truth;
        }

        @Override
        public Strength strength() {
            return Strength.SHOULD;
        }

        @Override
        public String key() {
            return "season";
        }

        @Override
        public double howFar() {
            return truth == Truth.YES ? 1 : 0;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof OfSeason season
                    && stage == season.stage
                    && rule.equals(season.rule)
                    && Objects.equals(closedBecause(), season.closedBecause())
                    && truth == season.truth
                    && Objects.equals(opensOn(), season.opensOn());
        }

        @Override
        public int hashCode() {
            return Objects.hash(stage, rule, truth);
        }

        @Override
        public String toString() {
            return "OfSeason[stage=%d, closedBecause=%s, opensOn=%s, truth=%s]"
                    .formatted(stage, closedBecause(), opensOn(), truth);
        }
    }

    /** Signed off before. */
    record OfDone(LocalDate doneOn, @Nullable LocalDate dueAgainOn) implements Reason {
        @Override
        public Truth truth() {
            return Truth.YES;
        }

        @Override
        public Strength strength() {
            return Strength.SHOULD;
        }

        @Override
        public String key() {
            return "done";
        }

        @Override
        public double howFar() {
            return 1;
        }
    }

    /** Not a technique for this species. */
    record OfSpecies() implements Reason {
        @Override
        public Truth truth() {
            return Truth.NO;
        }

        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public String key() {
            return "species";
        }

        @Override
        public double howFar() {
            return 0;
        }
    }
}
