package org.ripewood.print;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.ripewood.core.progress.Verdict;
import org.ripewood.people.Course;
import org.ripewood.platform.Paged;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.readiness.ReadinessSheet.Cell;
import org.ripewood.readiness.ReadinessSheet.Weight;
import org.ripewood.readiness.StylingHeld;

/** A readiness sheet with a cell of every kind; the trees are made up. */
final class ReadinessSample {

    private static final LocalDate ON = Samples.ON;
    private static final List<String> WORKS =
            List.of("Roots", "Trunk", "Wounds", "Branches", "Wire", "Refine", "Show");

    private ReadinessSample() {}

    static String html(int trees) {
        var course = new Course(2, 0, "Structure", ON, ON.plusYears(1));
        return ReadinessPaperPages.Templates.readiness(
                        ReadinessPaperPages.ReadinessPaper.of(course, sheet(trees), "sort=NAME&"))
                .render();
    }

    private static ReadinessSheet sheet(int trees) {
        var rows = IntStream.rangeClosed(1, trees).mapToObj(ReadinessSample::row).toList();
        return new ReadinessSheet(
                2,
                ON,
                WORKS.stream()
                        .map(title -> new ReadinessSheet.Work(title, title, "What belongs here."))
                        .toList(),
                new StylingHeld(trees, 2, ON.plusMonths(6), "summer 2026"),
                trees,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Paged<>(rows, 0, Math.max(1, trees), trees));
    }

    private static ReadinessSheet.Row row(int tree) {
        return new ReadinessSheet.Row(
                tree,
                "Slanting field elm " + tree,
                "Field elm",
                21,
                "Stan Student",
                null,
                new ReadinessSheet.Stage("structure", "Build the structure", 3, 0.4),
                new ReadinessSheet.Next("wiring", "Wire the primary branches", Verdict.HELD),
                ON.plusMonths(4),
                List.of(
                        cell(Verdict.READY, Weight.READY, "Check the roots", null, null),
                        cell(
                                Verdict.HELD,
                                Weight.HELD,
                                "trunk base",
                                "55 of 90\u00A0%",
                                "about 2029"),
                        cell(Verdict.MEASURE, Weight.LOOK, "vigour not known", null, null),
                        nothing(Verdict.DONE),
                        cell(
                                Verdict.HELD,
                                Weight.HELD,
                                "wound",
                                "9.5 of 8\u00A0mm",
                                "about August 2026"),
                        cell(
                                Verdict.HELD,
                                Weight.WAITS,
                                "after wire the primary branches",
                                null,
                                null),
                        nothing(Verdict.NOT_NEEDED)));
    }

    private static Cell nothing(Verdict state) {
        return new Cell(
                "work",
                state,
                Weight.NOTHING,
                null,
                null,
                null,
                null,
                null,
                null,
                "YES",
                1,
                null,
                null,
                null);
    }

    private static Cell cell(
            Verdict state, Weight weight, String words, String number, String lifts) {
        var truth =
                switch (state) {
                    case HELD -> "NO";
                    case MEASURE -> "UNKNOWN";
                    default -> "YES";
                };
        return new Cell(
                "work",
                state,
                weight,
                "technique",
                "Technique",
                words,
                number,
                lifts,
                null,
                truth,
                state == Verdict.HELD ? 0.6 : state == Verdict.MEASURE ? 0 : 1,
                null,
                null,
                null);
    }
}
