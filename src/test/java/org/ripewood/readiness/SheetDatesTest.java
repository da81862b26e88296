package org.ripewood.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.cases.CaseRun;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;

/** The dates of a sheet, of all trees of the content's judgement cases. */
@Tag("fast")
class SheetDatesTest {

    private static final int MANY = 15;

    private int dated;
    private int bounds;

    @Test
    void aDateIsThatOfTheChecklistAndLiesInAnOpenWindow() {
        var content = content();
        var run = new CaseRun(content, CaseRun.UP_TO);
        var leading = new LeadingTechnique(new TechniquePriority(content).byCode());
        var cells = new CellMaker(content, leading, null);
        for (var told : content.cases()) {
            var tree = run.tree(told);
            for (var cell : cells.cells(TreeRead.of(tree, leading))) {
                check(told.code(), tree, cell);
            }
        }
        assertThat(dated).isGreaterThan(MANY);
        assertThat(bounds).isGreaterThan(MANY);
    }

    private void check(String told, TreeOnDay tree, ReadinessSheet.Cell cell) {
        var on = cell.liftsOn();
        var technique = cell.technique();
        if (on == null || technique == null || "Likely by now: measure".equals(cell.lifts())) {
            return;
        }
        var where = "%s, %s: %s".formatted(told, technique, cell.lifts());
        var opening =
                Objects.requireNonNull(tree.tell(tree.find(technique).orElseThrow()).opening());
        if (opening.likely() != null) {
            assertThat(on).as(where).isEqualTo(opening.likely());
            dated++;
        } else {
            assertThat(cell.lifts()).as(where).startsWith("not before ");
            assertThat(cell.state()).as(where).isEqualTo(Verdict.HELD);
            bounds++;
        }
        assertThat(season(tree, technique, on)).as(where).isNotEqualTo(Truth.NO);
    }

    /** Whether the season is open on a day, asked of the rules anew. */
    private static Truth season(TreeOnDay tree, String technique, LocalDate on) {
        return tree.content().rulebook().standings(tree.subject(), on).stream()
                .filter(standing -> standing.technique().equals(technique))
                .flatMap(standing -> standing.reasons().stream())
                .filter(reason -> reason instanceof Reason.OfSeason)
                .map(Reason::truth)
                .findFirst()
                .orElse(Truth.UNKNOWN);
    }

    private static Content content() {
        return Objects.requireNonNull(
                CourseContent.check(Path.of("course-content"), null).content());
    }
}
