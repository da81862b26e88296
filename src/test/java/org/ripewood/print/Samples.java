package org.ripewood.print;

import java.math.BigDecimal;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.MeasuringDay;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.DayWork;
import org.ripewood.classday.DayTimetable;
import org.ripewood.classday.SessionPlan;
import org.ripewood.classday.TimetableShown;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Growth;
import org.ripewood.condition.Trunk;
import org.ripewood.core.bench.Span;
import org.ripewood.core.bench.Timetable;
import org.ripewood.core.bench.WorkPhase;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.ClosureForecast;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.growth.TaperProfile;
import org.ripewood.core.growth.Thickening;
import org.ripewood.core.progress.Criterion.Ages;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.progress.Work;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.CareWindow;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.SeasonOfYear;
import org.ripewood.course.FactText;
import org.ripewood.course.Lesson;
import org.ripewood.course.Species;
import org.ripewood.course.Technique;
import org.ripewood.pictures.QrCode;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.TrunkPicture;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Observation;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.routes.RouteView;
import org.ripewood.sessions.Session;
import org.ripewood.standing.OpeningView;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.StageView;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.trees.Tree;

/** An invented class and its trees, made by hand so that no day and no number ever changes. */
final class Samples {

    static final LocalDate ON = LocalDate.of(2026, 4, 20);
    static final URI BASE = URI.create("https://trees.example/");

    static final Tree TREE =
            new Tree(
                    7,
                    0,
                    "Slanting field elm",
                    "ulmus_minor",
                    21,
                    3,
                    LocalDate.of(2023, 3, 1),
                    "collected from a hedge, about 12 years old",
                    "a note for its keeper alone",
                    null);

    private Samples() {}

    static Technique wiring() {
        return technique(
                "wiring_primary",
                "Wire the primary branches",
                "Lay wire along the chosen branches and set them in their places.",
                false);
    }

    static Technique cutBack() {
        return technique(
                "cut_back", "Cut branches back hard", "Shorten long branches to two nodes.", true);
    }

    private static Technique technique(
            String code, String title, String summary, boolean irreversible) {
        return new Technique(
                new TechniqueRule(
                        code,
                        3,
                        TechniqueRule.Purpose.OTHER,
                        Set.of(),
                        Set.of(),
                        null,
                        null,
                        List.of(),
                        List.of(),
                        new SeasonRule(List.of(), List.of(), ""),
                        3,
                        90,
                        0,
                        null,
                        null),
                title,
                "structure",
                summary,
                "Teaching text.",
                List.of(),
                null,
                90,
                20,
                irreversible,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of("pliers", "wire cutters"),
                List.of("aluminium wire", "raffia"),
                List.of(new Technique.Take("aluminium wire", 80, "g", false)),
                List.of(
                        new Technique.Hazard(
                                "WARNING", "Wire ends spring.", "Wear eye protection."),
                        new Technique.Hazard(
                                "DANGER", "A blade under load slips.", "Cut away from the hand.")),
                List.of(
                        new Technique.Aftercare(
                                "shade",
                                "Keep out of full sun.",
                                Technique.Aftercare.Kind.SHADE,
                                new CareWindow(0, 14, 0, List.of(), List.of()),
                                null,
                                null),
                        new Technique.Aftercare(
                                "look",
                                "Look at every turn.",
                                Technique.Aftercare.Kind.WIRE_CHECK,
                                new CareWindow(7, 60, 0, List.of(), List.of()),
                                null,
                                null)),
                List.of("Turns lie at 45 to 55 degrees.", "No bud is caught."),
                "common practice, no source");
    }

    /** The papers of such a day. */
    static PlanSheets sheets(int trees) {
        return PlanSheets.of(plan(trees), BASE);
    }

    /** A class day of as many trees as asked for, every fourth has to be measured first. */
    static SessionPlan plan(int trees) {
        var rows =
                IntStream.rangeClosed(1, trees)
                        .mapToObj(number -> row(number, number % 4 == 0 ? null : pick(number)))
                        .toList();
        return new SessionPlan(
                new Session(
                        5,
                        0,
                        2,
                        LocalDate.of(2026, 4, 24),
                        LocalTime.of(9, 30),
                        LocalTime.of(12, 30),
                        "wiring-branches",
                        "Long shed",
                        List.of(1L, 2L),
                        List.of(),
                        Instant.EPOCH,
                        null,
                        null,
                        List.of(),
                        null),
                "Structure and refinement",
                new Lesson(
                        "wiring-branches",
                        "Wiring branches",
                        "structure",
                        4,
                        120,
                        List.of(),
                        null,
                        "",
                        ""),
                List.of("Ines Instructor", "Otto Other"),
                rows,
                List.of(
                        new SessionPlan.Need("pliers", 3, 2),
                        new SessionPlan.Need("turntable", 1, null)),
                List.of(new SessionPlan.Need("pliers", 3, 2)),
                List.of(
                        new SessionPlan.Need("aluminium wire", 2, null),
                        new SessionPlan.Need("raffia", 1, null)),
                List.of(
                        new SessionPlan.Want(
                                "aluminium wire",
                                BigDecimal.valueOf(160),
                                "g",
                                BigDecimal.valueOf(100),
                                BigDecimal.valueOf(60),
                                List.of("Elm 1", "Elm 2"),
                                List.of()),
                        new SessionPlan.Want(
                                "raffia",
                                BigDecimal.valueOf(5),
                                "m",
                                BigDecimal.valueOf(50),
                                BigDecimal.ZERO,
                                List.of("Elm 1"),
                                List.of())),
                List.of(
                        new SessionPlan.Caution(
                                "DANGER",
                                "A blade under load slips.",
                                "Cut away from the hand.",
                                List.of("Elm 1", "Elm 2")),
                        new SessionPlan.Caution(
                                "WARNING",
                                "Wire ends spring.",
                                "Wear eye protection.",
                                List.of("Elm 2"))),
                270,
                60,
                List.of(new Span(660, 675)),
                List.of(new Span(570, 600)),
                List.of(
                        new SessionPlan.InBetween(
                                "Stan Student 1", 1, "Elm 1", "Water with care", 3, true)),
                timetable(trees));
    }

    /** The first tree in three phases; the last one has no place. */
    private static TimetableShown timetable(int trees) {
        return new TimetableShown(
                new DayTimetable(
                        1,
                        5,
                        1,
                        0,
                        List.of(),
                        List.of(),
                        List.of(),
                        750,
                        12,
                        new Timetable.Worth(1, 1, 130, 130, Timetable.Found.PROVED),
                        1,
                        Instant.EPOCH),
                null,
                IntStream.rangeClosed(1, trees)
                        .filter(number -> number % 4 != 0)
                        .mapToObj(Samples::lines)
                        .flatMap(List::stream)
                        .toList(),
                List.of(
                        new TimetableShown.Left(
                                "Stan Student " + trees,
                                "Elm " + trees,
                                "Cut branches back hard",
                                "The school has no pliers.")),
                List.of(),
                LocalTime.of(12, 30),
                List.of(
                        new TimetableShown.Wait(
                                LocalTime.of(10, 25),
                                LocalTime.of(10, 37),
                                12,
                                "Stan Student 1",
                                1)),
                false);
    }

    private static List<TimetableShown.Line> lines(int number) {
        return List.of(
                line(number, 10, 0, 10, 25, WorkPhase.Kind.ALONE, false, null),
                line(
                        number,
                        10,
                        25,
                        10,
                        45,
                        number % 2 == 0 ? WorkPhase.Kind.INSPECTION : WorkPhase.Kind.HANDS_ON,
                        number % 2 == 0,
                        number % 3 == 0 ? "Otto Other" : "Ines Instructor"),
                line(number, 10, 45, 11, 0, WorkPhase.Kind.ALONE, false, null),
                line(number, 11, 15, 11, 45, WorkPhase.Kind.ALONE, false, null));
    }

    private static TimetableShown.Line line(
            int number,
            int hour,
            int minute,
            int endHour,
            int endMinute,
            WorkPhase.Kind kind,
            boolean cuts,
            @Nullable String instructor) {
        return new TimetableShown.Line(
                LocalTime.of(hour, minute),
                LocalTime.of(endHour, endMinute),
                Integer.toString(number),
                "Stan Student " + number,
                number,
                "Elm " + number,
                number % 2 == 0 ? "Cut branches back hard" : "Wire the primary branches",
                kind,
                cuts,
                instructor);
    }

    private static Technique pick(int number) {
        return number % 2 == 0 ? cutBack() : wiring();
    }

    private static SessionPlan.Row row(int number, @Nullable Technique technique) {
        return new SessionPlan.Row(
                String.valueOf(number),
                "Stan Student " + number,
                number,
                "Elm " + number,
                "Field elm",
                "Stage 3: Build the structure" + (number == 1 ? ", since 14 March 2026" : ""),
                technique,
                null,
                technique == null ? null : DayWork.Ground.READY,
                technique == null
                        ? "Nothing can be done today: vigour is not known."
                        : "Ready on the day. To be assigned.",
                technique == null
                        ? List.of("Vigour: Record this season's reference shoots.")
                        : List.of(),
                List.of());
    }

    private static ReasonView reason(String truth, String title, double howFar) {
        return new ReasonView(
                title,
                truth,
                truth.equals("UNKNOWN") ? "MISSING" : "NOT_MET",
                true,
                title,
                "at most 8 mm",
                truth.equals("UNKNOWN") ? null : "9.5 mm",
                truth.equals("UNKNOWN") ? null : ON.minusDays(12),
                "INSTRUCTOR",
                "Ines Instructor",
                "Wire presses on a young edge.",
                "Measure across the grain.",
                "largest_opening_mm",
                howFar,
                null);
    }

    static TechniqueStanding held() {
        return new TechniqueStanding(
                "wiring_secondary",
                "Wire the secondary branches",
                "refine",
                Verdict.HELD,
                0.6,
                null,
                new OpeningView(
                        ON.plusMonths(4),
                        ON.plusMonths(6),
                        null,
                        "Should be met on its own from about October 2026.",
                        List.of()),
                List.of(reason("NO", "Largest open wound", 0.6), reason("UNKNOWN", "Vigour", 0)),
                null);
    }

    private static TechniqueStanding ready() {
        return new TechniqueStanding(
                "cut_back",
                "Cut branches back hard",
                "develop",
                Verdict.READY,
                1,
                null,
                new OpeningView(null, null, null, "Can be done now.", List.of()),
                List.of(reason("YES", "Vigour", 1)),
                null);
    }

    static StageView stage() {
        return new StageView(
                "develop",
                "Develop the trunk",
                2,
                "Thickness, taper and movement in the trunk.",
                null,
                "develop",
                "Develop the trunk",
                List.of(reason("NO", "Base against plan", 0.6)),
                0.7);
    }

    static Checklist checklist() {
        return new Checklist(
                7,
                ON,
                stage(),
                List.of(),
                List.of(
                        new Checklist.Item(
                                new Step(
                                        4,
                                        0,
                                        7,
                                        "wiring_primary",
                                        StepState.ASSIGNED,
                                        1,
                                        ON.minusDays(3),
                                        ON,
                                        ON.plusDays(14),
                                        "Lowest branch first.",
                                        null,
                                        List.of(),
                                        null,
                                        List.of()),
                                wiring(),
                                held())),
                List.of(ready()),
                List.of(),
                List.of(held()),
                List.of(
                        new Checklist.Measure(
                                "vigour_index",
                                "Vigour",
                                "Record this season's reference shoots.",
                                "",
                                List.of()),
                        new Checklist.Measure(
                                "trunk_base_mm",
                                "Trunk base",
                                "Measure above the root flare.",
                                "mm",
                                List.of())),
                done(),
                List.of());
    }

    private static List<Checklist.Done> done() {
        return List.of(
                new Checklist.Done(
                        "root_check", "Check the roots", ON.minusDays(300), ON.plusDays(65)),
                new Checklist.Done("front", "Mark a tentative front", ON.minusDays(200), null));
    }

    static CareOnPaper care() {
        return new CareOnPaper(
                List.of(careTask("Keep out of full sun.", CareState.DUE)),
                List.of(),
                List.of(careTask("Look at every turn.", CareState.WAITING)),
                List.of(
                        new MeasuringDay(
                                7,
                                TREE.label(),
                                MeasuringDay.Subject.WOUNDS,
                                ON.minusDays(80),
                                ON.plusDays(10))));
    }

    private static CareTask careTask(String task, CareState state) {
        return new CareTask(
                "9-shade-1",
                7,
                TREE.label(),
                "cut_back",
                "Cut branches back hard",
                ON.minusDays(10),
                task,
                Technique.Aftercare.Kind.SHADE,
                state == CareState.WAITING ? ON.plusDays(5) : ON.minusDays(10),
                ON.plusDays(20),
                state,
                false,
                null);
    }

    static RouteView route() {
        return new RouteView(
                7,
                ON,
                "0123456789ab",
                "show",
                "Show",
                51,
                when(2, 3, 5, "This tree could finish “Show” about spring 2029."),
                List.of(
                        routeStep("Feed for growth", "Establish", 0, ""),
                        routeStep("Chop the trunk", "Develop the trunk", 1, "Base against plan"),
                        routeStep(
                                "Wire the primary branches",
                                "Build the structure",
                                2,
                                "recovery from “Chop the trunk”")),
                List.of(new RouteView.Link("chop", "Chop the trunk", "Base against plan")),
                List.of(
                        new RouteView.Waiting(
                                "Base against plan",
                                700,
                                0.6,
                                "Base against plan: about 23 months, 60 % of the time.")),
                List.of(
                        new RouteView.Assumed(
                                "Vigour",
                                true,
                                "Look at this first: Vigour.",
                                List.of("Chop the trunk"))),
                1000);
    }

    private static RouteView.When when(int earliest, int likely, int latest, String sentence) {
        return new RouteView.When(
                false,
                ON.plusYears(earliest),
                ON.plusYears(likely),
                ON.plusYears(latest),
                sentence,
                false,
                new RouteView.When.Seasons(
                        SeasonOfYear.of(ON.plusYears(earliest), 51).name(),
                        SeasonOfYear.of(ON.plusYears(likely), 51).name(),
                        SeasonOfYear.of(ON.plusYears(latest), 51).name()));
    }

    private static RouteView.Step routeStep(
            String title, String stage, int years, String waitsFor) {
        return new RouteView.Step(
                title,
                title,
                stage,
                stage,
                when(
                        years,
                        years + 1,
                        years + 2,
                        "Expected in about %d years.".formatted(years + 1)),
                String.valueOf(2027 + years),
                List.of(),
                0.5,
                years > 0,
                waitsFor,
                years > 0);
    }

    static TreeCard card() {
        return card(7, TREE.label());
    }

    static TreeCard card(long id, String label) {
        var address = BASE + "trees/" + id;
        return new TreeCard(id, label, "Field elm", "Ulmus minor", address, QrCode.of(address));
    }

    static Passport passport() {
        var growth = growth();
        var branches =
                List.of(
                        branch(1, "first left", BranchRole.PRIMARY, 90.0, 80.0, 14.0, null),
                        branch(2, "back", BranchRole.CANDIDATE, 140.0, 185.0, null, null),
                        branch(3, "low sacrifice", BranchRole.SACRIFICE, 30.0, 300.0, 22.0, ON));
        return new Passport(
                TREE,
                fieldElm(),
                ON,
                stage(),
                List.of(
                        seen(Fact.FRONT_MARK, Value.of("tentative"), "Front", Source.INSTRUCTOR),
                        seen(Fact.VIGOUR_INDEX, Value.of(74), "Vigour", Source.STUDENT),
                        seen(Fact.TRUNK_BASE_MM, Value.of(62), "Trunk base", Source.INSTRUCTOR)),
                List.of(new ContainerStay(1, 7, "training", "mica pot", 6.5, ON.minusYears(1))),
                growth.trunk(),
                TrunkPicture.of(TrunkOnPaper.of(TREE, growth, branches), Sheet.PAPER),
                growth.closings(),
                branches,
                List.of(new Passport.Stage("Establish", done())),
                List.of(
                        new Passport.Worked(
                                new WorkDone(
                                        3,
                                        7,
                                        new Work("cut_back", ON.minusDays(10), 4, 120, 0.35, 0.1),
                                        null,
                                        21,
                                        "a note that names Stan Student"),
                                "Cut branches back hard",
                                true),
                        new Passport.Worked(
                                new WorkDone(
                                        2,
                                        7,
                                        new Work("feed", ON.minusDays(30), 0, 0, 0, 0),
                                        null,
                                        21,
                                        null),
                                "Feed for growth",
                                true)),
                List.of(careTask("Keep out of full sun.", CareState.DUE)));
    }

    private static Growth growth() {
        var days = GrowthDays.plain();
        var chop =
                wound(
                        1,
                        "trunk chop",
                        205.0,
                        20.0,
                        34,
                        false,
                        List.of(reading(ON.minusYears(1), 24), reading(ON.minusDays(20), 15)));
        var shari = wound(2, "deadwood at the right", 120.0, 270.0, 18, true, List.of());
        return new Growth(
                List.of(
                        new Closing(
                                chop,
                                ON,
                                ClosureForecast.of(
                                        chop.closure(),
                                        CallusPace.MODERATE.belief(),
                                        75.0,
                                        null,
                                        days)),
                        new Closing(shari, ON, ClosureForecast.deadwood(shari.closure(), days))),
                new Trunk(
                        ON,
                        new TaperProfile(
                                List.of(
                                        new TaperProfile.Reading(10, 62),
                                        new TaperProfile.Reading(100, 48),
                                        new TaperProfile.Reading(200, 36))),
                        420.0,
                        null,
                        Thickening.of(
                                List.of(new Thickening.Reading(ON.minusYears(1), 60)),
                                Thickening.IN_TRAINING,
                                days)));
    }

    private static Wound wound(
            long id,
            String place,
            double heightMm,
            double bearing,
            double widthMm,
            boolean deadwood,
            List<Observation> readings) {
        return new Wound(
                id,
                7,
                place,
                ON.minusYears(2),
                widthMm,
                widthMm + 10,
                heightMm,
                bearing,
                deadwood,
                21,
                Source.INSTRUCTOR,
                readings);
    }

    private static Observation reading(LocalDate on, double mm) {
        return new Observation(
                on.toEpochDay(),
                7,
                Fact.WOUND_OPEN_MM,
                Value.of(mm),
                on,
                Source.STUDENT,
                21,
                Instant.EPOCH,
                null,
                1L,
                null,
                null,
                null);
    }

    private static Branch branch(
            long id,
            String name,
            BranchRole role,
            Double heightMm,
            Double bearing,
            @Nullable Double diameterMm,
            @Nullable LocalDate removedOn) {
        return new Branch(
                id,
                7,
                name,
                role,
                heightMm,
                bearing,
                removedOn,
                diameterMm,
                diameterMm == null ? null : 50.0);
    }

    private static Passport.Seen seen(Fact fact, Value value, String title, Source source) {
        return new Passport.Seen(
                new FactText(fact.code(), title, fact.unit(), "", Ages.DAYS),
                new Evidence(fact, value, ON.minusDays(15), source, "Stan Student", 1));
    }

    private static Species fieldElm() {
        return new Species(
                new Traits("ulmus_minor", Habit.DECIDUOUS, Set.of(), 0.4),
                "Ulmus minor",
                "Field elm",
                "",
                5,
                8,
                "",
                List.of(),
                "",
                2,
                3,
                4,
                5,
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                5,
                "",
                null,
                null,
                new ShootLengths(70, 150, 300, 900),
                "",
                List.of(new Species.Toxicity("sap", "Can irritate the skin.", "Wear gloves.", "")),
                "Text.");
    }
}
