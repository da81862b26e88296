package org.ripewood.core.progress;

import java.util.List;

/** What every contender answers for one technique: the verdict and the keys that speak against. */
public record Outcome(String technique, Verdict verdict, List<String> against) {

    /** Not known, as a number between {@link #NO} and {@link #YES}. */
    public static final int UNKNOWN = 1;

    public static final int NO = 0;
    public static final int YES = 2;

    /** Weighs skill and season behind the rest. */
    public static Verdict verdict(int truth, boolean skilled, int season) {
        if (truth == NO) {
            return Verdict.HELD;
        }
        if (truth == UNKNOWN || season == UNKNOWN) {
            return Verdict.MEASURE;
        }
        if (!skilled) {
            return Verdict.LESSON;
        }
        return season == YES ? Verdict.READY : Verdict.SEASON;
    }
}
