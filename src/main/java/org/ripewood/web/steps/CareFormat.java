package org.ripewood.web.steps;

import io.quarkus.qute.TemplateExtension;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.MeasuringDay;
import org.ripewood.aftercare.Saying;
import org.ripewood.boards.Checklist;
import org.ripewood.core.season.CareState;
import org.ripewood.web.kit.Mark;
import org.ripewood.web.kit.TextFormat;

/** Care as it is written on pages and on paper. */
@TemplateExtension
final class CareFormat {

    private static final int LONG_MONTHS = 6;

    private static final DateTimeFormatter MONTH =
            DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);

    private CareFormat() {}

    static Mark mark(CareTask task) {
        var mark = Mark.of(task.state());
        var said = task.said();
        return said != null && said.what() == Saying.NOT_NEEDED ? mark.saying("Not needed") : mark;
    }

    /** When it is to be done, from where the reader stands. */
    static String when(CareTask task) {
        return switch (task.state()) {
            case LATE -> "Was due until " + TextFormat.day(task.to());
            case DUE -> until(task.from(), task.to());
            case WAITING, DONE, OVER ->
                    task.from().equals(task.to())
                            ? "On " + TextFormat.day(task.from())
                            : "From %s to %s"
                                    .formatted(
                                            TextFormat.day(task.from()), TextFormat.day(task.to()));
        };
    }

    /** The same of care after work that nobody has signed off yet. */
    static String when(Checklist.Care care) {
        return until(care.from(), care.until());
    }

    /** Of what goes on for more than half a year the day of its end is of no use yet. */
    private static String until(LocalDate from, LocalDate to) {
        return to.isAfter(from.plusMonths(LONG_MONTHS))
                ? "Goes on until " + MONTH.format(to)
                : "Until " + TextFormat.day(to);
    }

    static String told(CareTask.Said said) {
        return said.what() == Saying.DONE
                ? "Done on %s, says %s.".formatted(TextFormat.day(said.on()), said.by())
                : "Not needed, says %s on %s.".formatted(said.by(), TextFormat.day(said.on()));
    }

    static boolean late(CareTask task) {
        return task.state() == CareState.LATE;
    }

    static String told(MeasuringDay day) {
        return switch (day.subject()) {
            case WOUNDS -> "Measure the open wounds again";
            case TRUNK -> "Measure the trunk base again";
        };
    }
}
