package org.ripewood.web.courses;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.Board.Headline;
import org.ripewood.boards.BoardAsked;
import org.ripewood.platform.PageRequest;

/** Which trees of a board are asked for, as its form sends it. */
record BoardFilter(
        @Nullable Headline headline,
        @Size(max = 60) @Nullable String reason,
        @Size(max = 60) @Nullable String fact,
        @Size(max = 60) @Nullable String species,
        @Nullable Long student,
        @Size(max = 60) @Nullable String stage,
        @Nullable Integer withinWeeks,
        @Nullable Integer unseenWeeks,
        @Nullable Integer page) {

    static final List<String> FIELDS =
            List.of(
                    "headline",
                    "reason",
                    "fact",
                    "species",
                    "student",
                    "stage",
                    "withinWeeks",
                    "unseenWeeks");

    static final BoardFilter ALL =
            new BoardFilter(null, null, null, null, null, null, null, null, null);

    private static final int ROWS = 25;

    BoardAsked asked() {
        return new BoardAsked(
                headline,
                reason,
                fact,
                species,
                student,
                stage,
                withinWeeks == null ? BoardAsked.WITHIN_WEEKS : withinWeeks,
                unseenWeeks == null ? BoardAsked.UNSEEN_WEEKS : unseenWeeks);
    }

    PageRequest rows() {
        return new PageRequest(page == null ? 0 : page, ROWS);
    }
}
