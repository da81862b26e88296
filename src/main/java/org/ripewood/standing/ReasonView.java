package org.ripewood.standing;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A reason as people read it; also how it is stored with a decision, so it needs nothing else to be
 * understood.
 *
 * @param key names the reason within its technique
 * @param truth {@code YES}, {@code NO} or {@code UNKNOWN}
 * @param look for criteria {@code MET}, {@code NOT_MET}, {@code MISSING}, {@code STALE} or {@code
 *     PROVISIONAL}; null for the others
 * @param waivable whether an instructor may let it pass
 * @param title what it is about
 * @param required what is asked for, with unit
 * @param observed what there is, with unit; null when nothing is known
 * @param evidenceDay day of the evidence
 * @param source of the evidence: {@code STUDENT}, {@code INSTRUCTOR}, {@code DERIVED}, {@code
 *     FORECAST}
 * @param why the sentence that teaches why
 * @param how what to measure and how, when it is not known
 * @param factCode the fact to record, when it is not known or not met
 * @param howFar 0 to 1
 * @param outlook when it will have gone by itself, or why that cannot be said; null when it is met
 */
public record ReasonView(
        String key,
        String truth,
        @Nullable String look,
        boolean waivable,
        String title,
        String required,
        @Nullable String observed,
        @Nullable LocalDate evidenceDay,
        @Nullable String source,
        @Nullable String by,
        String why,
        @Nullable String how,
        @Nullable String factCode,
        double howFar,
        @Nullable String outlook) {

    /** The same, with its outlook. */
    ReasonView withOutlook(String sentence) {
        return new ReasonView(
                key,
                truth,
                look,
                waivable,
                title,
                required,
                observed,
                evidenceDay,
                source,
                by,
                why,
                how,
                factCode,
                howFar,
                sentence);
    }

    /** The same, seen by another name. */
    ReasonView withBy(String name) {
        return new ReasonView(
                key,
                truth,
                look,
                waivable,
                title,
                required,
                observed,
                evidenceDay,
                source,
                name,
                why,
                how,
                factCode,
                howFar,
                outlook);
    }

    /** Whether it waits for another technique; its outlook then says what the reason says, too. */
    private boolean ofTurn() {
        return key.startsWith("after.") || key.startsWith("needs.");
    }

    /**
     * The reason in one sentence; where another technique comes first, with how that one stands.
     */
    public String told() {
        var more = outlook;
        return ofTurn() && more != null ? more : sentence();
    }

    /** The outlook where {@link #told} does not say it already. */
    public @Nullable String outlookApart() {
        return ofTurn() ? null : outlook;
    }

    public boolean met() {
        return "YES".equals(truth);
    }

    /** The reason in one sentence, with its values. */
    public String sentence() {
        return ReasonSentence.of(this);
    }
}
