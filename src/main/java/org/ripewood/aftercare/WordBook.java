package org.ripewood.aftercare;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.CareTask.Said;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.TreeDays;

/** Takes down what people say of tasks. */
@ApplicationScoped
class WordBook {

    private final WordRows rows;
    private final Today today;
    private final TreeDays treeDays;

    WordBook(WordRows rows, Today today, TreeDays treeDays) {
        this.rows = rows;
        this.today = today;
        this.treeDays = treeDays;
    }

    /**
     * Keeps a word unless the same one stands already.
     *
     * @param spokenBefore the day of the look before this one, when the task is a look
     * @param spokenAfter whether a later look of the same task was spoken of
     */
    void keep(
            Actor actor,
            CareTask task,
            TaskKey key,
            Saying what,
            NewWord word,
            @Nullable LocalDate spokenBefore,
            boolean spokenAfter) {
        var on = word.on() == null ? treeDays.at(task.treeId()) : word.on();
        var note = word.note() == null || word.note().isBlank() ? null : word.note().strip();
        var spoken = spoken(key);
        var last = spoken.isEmpty() ? null : spoken.get(spoken.size() - 1);
        if (last != null && last.says(what, on, note)) {
            return;
        }
        checkDay(task, on, spokenBefore);
        checkOrder(task, what, word, last);
        if (spokenAfter) {
            throw Refused.conflict(
                    "The look after this one was already spoken of and counts from it.",
                    "Maybe take the later one back first.");
        }
        append(actor, task, key, what, on, note, spoken.size());
    }

    private List<WordEntity> spoken(TaskKey key) {
        return rows.list(
                "workId = ?1 and task = ?2 and times = ?3 order by number",
                key.workId(),
                key.task(),
                key.time());
    }

    private void checkDay(CareTask task, LocalDate on, @Nullable LocalDate spokenBefore) {
        var first = spokenBefore == null ? task.workedOn() : spokenBefore;
        var last = treeDays.last(task.treeId());
        if (on.isBefore(first) || on.isAfter(last)) {
            throw Refused.invalid(
                    List.of(
                            new Fault(
                                    "on",
                                    "Expected a day from %s to today, %s; found %s."
                                            .formatted(first, last, on))));
        }
    }

    private static void checkOrder(
            CareTask task, Saying what, NewWord word, @Nullable WordEntity last) {
        var said = task.said();
        if (what == Saying.TAKEN_BACK) {
            if (said == null && (last == null || last.what != Saying.TAKEN_BACK)) {
                throw Refused.conflict("Nobody has said anything of this task yet.", null);
            }
        } else if (said != null && !Boolean.TRUE.equals(word.corrects())) {
            throw Refused.conflict(already(said), "Maybe say that yours corrects what was said.");
        }
    }

    private static String already(Said said) {
        return said.what() == Saying.DONE
                ? "%s said it was done on %s.".formatted(said.by(), said.on())
                : "%s said on %s that it is not needed.".formatted(said.by(), said.on());
    }

    private void append(
            Actor actor,
            CareTask task,
            TaskKey key,
            Saying what,
            LocalDate on,
            @Nullable String note,
            int number) {
        var row = new WordEntity();
        row.treeId = task.treeId();
        row.workId = key.workId();
        row.task = key.task();
        row.times = key.time();
        row.number = number;
        row.what = what;
        row.onDay = on;
        row.note = note;
        row.byId = actor.personId();
        row.recordedAt = today.now();
        try {
            rows.persistAndFlush(row);
        } catch (ConstraintViolationException quicker) {
            throw Refused.conflict(
                    "Somebody else said something of this task at the same moment.",
                    "Maybe look at it again.");
        }
    }
}
