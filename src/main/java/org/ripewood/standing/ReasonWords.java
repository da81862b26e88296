package org.ripewood.standing;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Strength;

/** Gathers the parts of a reason's view by name, since most reasons have only some of them. */
final class ReasonWords {

    private final Reason reason;
    private final String title;
    private boolean waivable;
    private String required = "";
    private @Nullable String observed;
    private @Nullable LocalDate day;
    private @Nullable String source;
    private @Nullable String by;
    private @Nullable String look;
    private String why = "";
    private @Nullable String how;
    private @Nullable String factCode;

    ReasonWords(Reason reason, String title) {
        this.reason = reason;
        this.title = title;
        this.waivable = reason.strength() == Strength.SHOULD;
    }

    ReasonWords notWaivable() {
        waivable = false;
        return this;
    }

    ReasonWords required(String text) {
        required = text;
        return this;
    }

    ReasonWords observed(String text) {
        observed = text;
        return this;
    }

    ReasonWords from(Evidence evidence) {
        day = evidence.observedOn();
        source = evidence.source().name();
        by = evidence.by();
        return this;
    }

    ReasonWords on(LocalDate seen) {
        day = seen;
        return this;
    }

    ReasonWords look(Reason.Look found) {
        look = found.name();
        return this;
    }

    ReasonWords why(String sentence) {
        why = sentence;
        return this;
    }

    ReasonWords how(String text) {
        how = text;
        return this;
    }

    ReasonWords toRecord(Fact fact) {
        factCode = fact.code();
        return this;
    }

    ReasonView view() {
        return new ReasonView(
                reason.key(),
                reason.truth().name(),
                look,
                waivable,
                title,
                required,
                observed,
                day,
                source,
                by,
                why,
                how,
                factCode,
                Math.max(0, Math.min(1, reason.howFar())),
                null);
    }
}
