package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.List;
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
        MET,
        NOT_MET,
        /** Nobody has looked. */
        MISSING,
        /** Looked at, too long ago. */
        STALE,
        /** To be looked at when the work begins. */
        ON_THE_DAY,
        /** A student's own evidence where an instructor's eye is asked for. */
        PROVISIONAL
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
            return switch (look) {
                case MET, ON_THE_DAY -> Truth.YES;
                case NOT_MET -> Truth.NO;
                case MISSING, STALE, PROVISIONAL -> Truth.UNKNOWN;
            };
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
    record OfOrder(String technique, Truth truth) implements Reason {
        @Override
        public Strength strength() {
            return Strength.MUST;
        }

        @Override
        public String key() {
            return "after." + technique;
        }

        @Override
        public double howFar() {
            return truth == Truth.YES ? 1 : 0;
        }
    }

    /** Work on the material that the tree still needs, while nothing is styled. */
    record OfDevelopment(String technique) implements Reason {
        @Override
        public Truth truth() {
            return Truth.NO;
        }

        @Override
        public Strength strength() {
            return Strength.SHOULD;
        }

        @Override
        public String key() {
            return "needs." + technique;
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

    /**
     * The growth stage against the window.
     *
     * @param closedBecause why an otherwise open stage is to be avoided; null when it is not
     * @param opensOn first day from the day asked for on which the window is open; null when that
     *     was not asked or does not happen within thirteen months
     */
    record OfSeason(
            int stage,
            SeasonRule rule,
            @Nullable String closedBecause,
            @Nullable LocalDate opensOn,
            Truth truth)
            implements Reason {
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
