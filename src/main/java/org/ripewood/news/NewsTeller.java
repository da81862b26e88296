package org.ripewood.news;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.ripewood.course.Content;
import org.ripewood.course.Stage;

/** Puts what happened into sentences. */
final class NewsTeller {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private final Content content;

    NewsTeller(Content content) {
        this.content = content;
    }

    NewsLine tell(NewsRow row) {
        return new NewsLine(row.at(), sentence(row), path(row));
    }

    private String sentence(NewsRow row) {
        var title = content.titleOf(row.code());
        return switch (row.what()) {
            case "ASSIGNED" -> "%s assigned “%s” for %s.".formatted(row.by(), title, row.tree());
            case "REPORTED" -> "%s reported “%s” on %s.".formatted(row.by(), title, row.tree());
            case "SENT_BACK" -> "%s sent back “%s” on %s.".formatted(row.by(), title, row.tree());
            case "SIGNED_OFF" -> "%s signed off “%s” on %s.".formatted(row.by(), title, row.tree());
            case "WITHDRAWN" -> "%s withdrew “%s” for %s.".formatted(row.by(), title, row.tree());
            case "FOUND_DONE" ->
                    "%s noted “%s” as done on %s.".formatted(row.by(), title, row.tree());
            case "ASKED_STEP" -> "%s asks for “%s” on %s.".formatted(row.by(), title, row.tree());
            case "ASKED_QUESTION" ->
                    "%s asks about “%s” on %s.".formatted(row.by(), title, row.tree());
            case "ANSWERED" ->
                    "%s answered about “%s” on %s.".formatted(row.by(), title, row.tree());
            case "STAGE" ->
                    "%s confirmed the stage “%s” for %s."
                            .formatted(row.by(), stage(row.code()), row.tree());
            default -> ofClass(row);
        };
    }

    private static String ofClass(NewsRow row) {
        return switch (row.what()) {
            case "MOVED" -> moved(row);
            case "CANCELLED" ->
                    "%s cancelled the class of %s, %s."
                            .formatted(row.by(), day(row.code()), row.course());
            case "GIVEN_UP" ->
                    "%s gave up the place of %s in the class of %s."
                            .formatted(row.by(), row.tree(), day(row.code()));
            default -> throw new IllegalStateException("nothing is known of " + row.what());
        };
    }

    private static String moved(NewsRow row) {
        var days = row.code().split("/", 2);
        return days[0].equals(days[1])
                ? "%s changed the time or place of the class of %s, %s."
                        .formatted(row.by(), day(days[0]), row.course())
                : "%s moved the class of %s to %s, %s."
                        .formatted(row.by(), day(days[0]), day(days[1]), row.course());
    }

    private static String path(NewsRow row) {
        return switch (row.what()) {
            case "ASKED_STEP", "ASKED_QUESTION", "ANSWERED" ->
                    "/trees/%d/asks#ask-%d".formatted(row.treeId(), row.thingId());
            case "STAGE" -> "/trees/%d/techniques#stage".formatted(row.treeId());
            case "MOVED", "CANCELLED", "GIVEN_UP" -> "/sessions/" + row.thingId();
            default -> "/steps/" + row.thingId();
        };
    }

    private String stage(String code) {
        return content.stages().stream()
                .filter(stage -> stage.code().equals(code))
                .map(Stage::title)
                .findFirst()
                .orElse(code);
    }

    private static String day(String iso) {
        return DAY.format(LocalDate.parse(iso));
    }
}
