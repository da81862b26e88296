package org.ripewood.aftercare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.CareTask.Said;
import org.ripewood.condition.TreeState;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.LookRhythm;
import org.ripewood.core.season.Span;
import org.ripewood.course.Content;
import org.ripewood.course.Technique;
import org.ripewood.records.WorkDone;

/**
 * The tasks of a tree, worked out anew from its record, the content in force and what was said.
 *
 * <p>Of a technique done several times the latest time counts. A look that repeats is one look for
 * the whole tree: of several works that ask for it by the same code the latest counts.
 */
final class TreeTasks {

    /** A measure or a look at wire is still worth catching up so many days after its time. */
    private static final int MOST_LATE_DAYS = 60;

    /** Tasks further ahead than their works are not looked for. */
    private static final int MOST_LOOKS_AHEAD = 60;

    private final Content content;
    private final TreeState state;
    private final Words words;
    private final LocalDate until;
    private final List<CareTask> tasks = new ArrayList<>();

    private TreeTasks(Content content, TreeState state, Words words, LocalDate until) {
        this.content = content;
        this.state = state;
        this.words = words;
        this.until = until;
    }

    /**
     * All tasks, also those long over.
     *
     * @param until repeating tasks are told up to this day as if each were done when it is due; at
     *     least the next one is
     */
    static List<CareTask> of(Content content, TreeState state, Words words, LocalDate until) {
        var tasks = new TreeTasks(content, state, words, until);
        tasks.derive();
        return tasks.tasks.stream().sorted(CareTask.DUE_FIRST).toList();
    }

    private record Asked(WorkDone work, Technique technique, Technique.Aftercare care, Span span) {
        TaskKey key(int time) {
            return new TaskKey(work.id(), care.code(), time);
        }
    }

    private void derive() {
        var told = new HashSet<String>();
        for (var work : latestFirst(state.works())) {
            var technique = content.techniques().get(work.work().technique());
            if (technique != null) {
                technique.aftercare().stream()
                        .filter(care -> told.add(name(technique, care)))
                        .flatMap(care -> asked(work, technique, care))
                        .forEach(this::add);
            }
        }
    }

    private static List<WorkDone> latestFirst(List<WorkDone> oldestFirst) {
        var works = new ArrayList<>(oldestFirst);
        java.util.Collections.reverse(works);
        return works;
    }

    private static String name(Technique technique, Technique.Aftercare care) {
        return care.rhythm() == null ? technique.code() + " " + care.code() : care.code();
    }

    private Stream<Asked> asked(WorkDone work, Technique technique, Technique.Aftercare care) {
        return care.window().after(work.doneOn(), state.stages()).stream()
                .map(span -> new Asked(work, technique, care, span));
    }

    private void add(Asked asked) {
        var rhythm = asked.care().rhythm();
        if (rhythm == null) {
            addOnce(asked);
        } else {
            addLooks(asked, rhythm);
        }
    }

    private void addOnce(Asked asked) {
        var key = asked.key(1);
        var said = words.find(key);
        var span = asked.span();
        add(asked, key, span, said == null ? unsaid(asked, span) : settled(said), said);
    }

    private CareState unsaid(Asked asked, Span span) {
        return ended(asked) ? CareState.OVER : CareState.of(span, lateUntil(asked), state.on());
    }

    /** What is kept up ends by itself; a measure nobody took can still be taken. */
    private static LocalDate lateUntil(Asked asked) {
        var to = asked.span().to();
        return switch (asked.care().kind()) {
            case WIRE_CHECK, MEASURE -> to.plusDays(MOST_LATE_DAYS);
            case SHADE, NO_FEED, FROST_GUARD, OTHER -> to;
        };
    }

    private static CareState settled(Said said) {
        return said.what() == Saying.DONE ? CareState.DONE : CareState.OVER;
    }

    /** Looks that were taken, the one that is next, and what follows if it is taken in time. */
    private void addLooks(Asked asked, LookRhythm rhythm) {
        var looked = asked.span().from();
        int time = 1;
        for (var said = words.find(asked.key(1));
                said != null;
                said = words.find(asked.key(++time))) {
            var span = look(asked, rhythm, looked);
            var day = said.on();
            add(
                    asked,
                    asked.key(time),
                    span == null ? new Span(day, day) : span,
                    settled(said),
                    said);
            if (said.what() == Saying.NOT_NEEDED) {
                return;
            }
            looked = day;
        }
        if (!ended(asked)) {
            addOpenLooks(asked, rhythm, looked, time);
        }
    }

    private void addOpenLooks(Asked asked, LookRhythm rhythm, LocalDate lookedLast, int next) {
        var looked = lookedLast;
        for (int time = next; time < next + MOST_LOOKS_AHEAD; time++) {
            var span = look(asked, rhythm, looked);
            if (span == null || (time > next && span.from().isAfter(until))) {
                return;
            }
            // a look missed can be taken as long as the care lasts
            add(
                    asked,
                    asked.key(time),
                    span,
                    CareState.of(span, asked.span().to(), state.on()),
                    null);
            looked = later(span.from(), state.on());
        }
    }

    private @Nullable Span look(Asked asked, LookRhythm rhythm, LocalDate looked) {
        return rhythm.nextWithin(asked.span(), looked, state.stages()).orElse(null);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? other : one;
    }

    /** Whether what ends the care for good was seen after the work. */
    private boolean ended(Asked asked) {
        var ends = asked.care().endsWhen();
        if (ends == null) {
            return false;
        }
        var seen = state.facts().find(ends.fact());
        return seen != null
                && seen.value().equals(ends.value())
                && !seen.observedOn().isBefore(asked.work().doneOn());
    }

    private void add(Asked asked, TaskKey key, Span span, CareState how, @Nullable Said said) {
        tasks.add(
                new CareTask(
                        key.text(),
                        state.tree().id(),
                        state.tree().label(),
                        asked.technique().code(),
                        asked.technique().title(),
                        asked.work().doneOn(),
                        asked.care().task(),
                        asked.care().kind(),
                        span.from(),
                        span.to(),
                        how,
                        asked.care().rhythm() != null,
                        said));
    }
}
