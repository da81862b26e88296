package org.ripewood.firstlook;

import java.util.List;
import org.ripewood.records.Question;

/** An answer looks odd: nothing of it was kept, and these questions are to be answered first. */
public final class OddLook extends RuntimeException {

    private final transient List<Question> questions;

    OddLook(List<Question> questions) {
        super("an answer looks odd", null, false, false);
        this.questions = List.copyOf(questions);
    }

    /** At least one; its field is one of {@link NewLook}. */
    public List<Question> questions() {
        return questions;
    }
}
