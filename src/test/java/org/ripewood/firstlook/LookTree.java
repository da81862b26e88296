package org.ripewood.firstlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.cases.CaseRun;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.course.ContentFault;
import org.ripewood.course.CourseContent;
import org.ripewood.course.JudgementCase;
import org.ripewood.standing.TreeOnDay;

/** New trees of students who have shown no skill yet, by the content that travels along. */
public final class LookTree {

    static final Content CONTENT = read();

    static final List<JudgementCase.Climate> CLIMATES =
            CONTENT.cases().stream().map(JudgementCase::climate).distinct().toList();

    private static final CaseRun RUN = new CaseRun(CONTENT, CaseRun.UP_TO);

    private LookTree() {}

    private static Content read() {
        var checked = CourseContent.check(Path.of("course-content"), null);
        assertThat(checked.faults()).extracting(ContentFault::told).isEmpty();
        return Objects.requireNonNull(checked.content());
    }

    static JudgementCase.Climate climate(String code) {
        return CLIMATES.stream()
                .filter(climate -> climate.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /** A tree of which a student has seen this today, and nobody anything before. */
    static TreeOnDay on(
            String species,
            JudgementCase.Climate climate,
            MonthDay day,
            Map<Fact, Value> seen,
            JudgementCase.@Nullable Stay container) {
        var known = new ArrayList<JudgementCase.Known>();
        seen.forEach(
                (fact, value) ->
                        known.add(new JudgementCase.Known(fact, value, 0, Source.STUDENT)));
        return RUN.tree(
                new JudgementCase(
                        "first-look",
                        "new-tree",
                        "A new tree",
                        "",
                        0,
                        species,
                        climate,
                        day,
                        new JudgementCase.Tree(
                                known, List.of(), List.of(), List.of(), container, List.of(),
                                List.of()),
                        Set.of(),
                        "root_check",
                        Set.of(Verdict.READY),
                        List.of(),
                        List.of(),
                        null,
                        Set.of(),
                        "",
                        ""));
    }

    public static TreeOnDay maple(Map<Fact, Value> seen) {
        return on("acer_palmatum", climate("maritime-53n"), MonthDay.of(7, 15), seen, null);
    }
}
