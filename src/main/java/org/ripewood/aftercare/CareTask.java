package org.ripewood.aftercare;

import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.Span;
import org.ripewood.course.Technique.Aftercare.Kind;

/**
 * Something to do for a tree after work on it.
 *
 * @param id names it while the work stands in the record: work, task and how many times it comes
 * @param afterTitle title of the technique
 * @param from first day on which it is in time
 * @param to last day on which it is in time
 * @param repeats whether it comes again when it was done
 * @param said the word that stands; null when nobody has spoken
 */
public record CareTask(
        String id,
        long treeId,
        String tree,
        String technique,
        String afterTitle,
        LocalDate workedOn,
        String task,
        Kind kind,
        LocalDate from,
        LocalDate to,
        CareState state,
        boolean repeats,
        @Nullable Said said) {

    /** A word on a task: what, as of which day, by whom. */
    public record Said(Saying what, LocalDate on, long byId, String by, @Nullable String note) {}

    /** What is due first: late and due ones by their end, those to come by their beginning. */
    static final Comparator<CareTask> DUE_FIRST =
            Comparator.comparing(CareTask::state)
                    .thenComparing(task -> task.ahead() ? task.from() : task.to())
                    .thenComparing(CareTask::from)
                    .thenComparing(CareTask::treeId)
                    .thenComparing(CareTask::id);

    /** Whether it is still to be done: late, due or to come. */
    public boolean open() {
        return state == CareState.LATE || state == CareState.DUE || state == CareState.WAITING;
    }

    /** Whether its days have begun and it is still to be done. */
    public boolean now() {
        return state == CareState.LATE || state == CareState.DUE;
    }

    /** Whether its days are still to come. */
    public boolean ahead() {
        return state == CareState.WAITING;
    }

    /** The days on which it is in time. */
    public Span span() {
        return new Span(from, to);
    }
}
