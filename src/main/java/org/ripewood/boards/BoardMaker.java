package org.ripewood.boards;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.people.Courses;
import org.ripewood.people.Membership;
import org.ripewood.people.Person;
import org.ripewood.people.Roster;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Today;
import org.ripewood.platform.meters.Measured;
import org.ripewood.platform.meters.Meter;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/**
 * Makes a course's board, in a number of queries that does not depend on how many trees it has: as
 * many for ten as for a hundred, and trees of other courses are not asked for.
 */
@ApplicationScoped
@Transactional
public class BoardMaker {

    private static final Comparator<TreeOnBoard> MOST_URGENT_FIRST =
            Comparator.comparing((TreeOnBoard tree) -> tree.lead().headline())
                    .thenComparing(tree -> tree.day().tree().label())
                    .thenComparing(tree -> tree.day().tree().id());

    private final Courses schoolCourses;
    private final TreesUnchecked treesUnchecked;
    private final SubjectGatherer gatherer;
    private final StudentsUnseen unseen;
    private final Today today;

    BoardMaker(
            Courses schoolCourses,
            TreesUnchecked treesUnchecked,
            SubjectGatherer gatherer,
            StudentsUnseen unseen,
            Today today) {
        this.schoolCourses = schoolCourses;
        this.treesUnchecked = treesUnchecked;
        this.gatherer = gatherer;
        this.unseen = unseen;
        this.today = today;
    }

    /** A course's board; instructors of the course and registrars only. */
    @Measured(Meter.BOARD_MADE)
    public Board make(
            Actor actor, long courseId, LocalDate on, BoardAsked asked, PageRequest page) {
        return board(schoolCourses.roster(actor, courseId), on, asked, page);
    }

    /** The same of a course whose members were just read. */
    @Measured(Meter.BOARD_MADE)
    public Board make(Roster roster, LocalDate on, BoardAsked asked, PageRequest page) {
        return board(roster, on, asked, page);
    }

    /** The same with all rows the filter leaves, on one page. */
    public Board whole(Actor actor, long courseId, LocalDate on, BoardAsked asked) {
        return board(schoolCourses.roster(actor, courseId), on, asked, null);
    }

    private Board board(Roster roster, LocalDate on, BoardAsked asked, @Nullable PageRequest page) {
        roster.requireRuns("its board");
        var courseId = roster.course().id();
        var students =
                roster.students().stream().collect(Collectors.toMap(Person::id, person -> person));
        var kept =
                students.isEmpty() ? List.<Tree>of() : treesUnchecked.ofKeepers(students.keySet());
        var ids = kept.stream().map(Tree::id).toList();
        var gathered = gatherer.of(kept, students.values(), on);
        var unseen = unseen(roster, asked, ids, on);
        if (gathered.isEmpty()) {
            return new Board(
                    courseId,
                    on,
                    Map.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    unseen,
                    List.of(),
                    page == null ? new Paged<>(List.of(), 0, 1, 0) : Paged.of(List.of(), page, 0));
        }
        var content = gathered.get(0).content();
        var headlines = new Headlines(new TechniquePriority(content));
        var all =
                gathered.stream()
                        .map(day -> onBoard(day, headlines, students, asked.withinWeeks()))
                        .toList();
        var chosen =
                all.stream().filter(tree -> tree.isAsked(asked)).sorted(MOST_URGENT_FIRST).toList();
        return new Board(
                courseId,
                on,
                counts(all),
                HoldReasons.count(all.stream().map(TreeOnBoard::holds).toList()),
                EvidenceAges.count(all),
                EvidenceAges.oldest(all),
                all.stream().flatMap(this::waiting).sorted(OLDEST_FIRST).toList(),
                unseen,
                LessonsNext.of(content, gathered),
                paged(chosen, page, tree -> row(headlines, tree)));
    }

    private static final Comparator<Board.Report> OLDEST_FIRST =
            Comparator.comparing(Board.Report::reportedOn).thenComparing(Board.Report::stepId);

    private List<Board.Unseen> unseen(
            Roster roster, BoardAsked asked, Collection<Long> treeIds, LocalDate on) {
        var since =
                roster.memberships().stream()
                        .filter(member -> member.leftOn() == null)
                        .collect(Collectors.toMap(Membership::personId, Membership::since));
        return unseen.of(roster.students(), treeIds, since, on, asked.unseenWeeks());
    }

    private static TreeOnBoard onBoard(
            TreeOnDay day, Headlines headlines, Map<Long, Person> students, int withinWeeks) {
        var keeper = students.get(day.tree().keeperId());
        return new TreeOnBoard(
                day,
                headlines.of(day),
                keeper == null ? "" : keeper.name(),
                HoldReasons.of(day),
                EvidenceAges.of(day, withinWeeks),
                day.stage().code());
    }

    private Stream<Board.Report> waiting(TreeOnBoard tree) {
        return tree.day().open().values().stream()
                .filter(step -> step.state() == StepState.REPORTED)
                .map(step -> report(tree, step));
    }

    private Board.Report report(TreeOnBoard tree, StepBrief step) {
        var kept = tree.day().tree();
        var reportedOn =
                Objects.requireNonNull(step.reportedAt()).atZone(today.zone()).toLocalDate();
        return new Board.Report(
                step.id(),
                kept.id(),
                kept.label(),
                tree.keeper(),
                step.technique(),
                tree.day().content().titleOf(step.technique()),
                reportedOn,
                Math.max(0, ChronoUnit.DAYS.between(reportedOn, tree.day().on())));
    }

    private static Map<Board.Headline, Integer> counts(Collection<TreeOnBoard> trees) {
        var counts = new EnumMap<Board.Headline, Integer>(Board.Headline.class);
        trees.forEach(tree -> counts.merge(tree.lead().headline(), 1, Integer::sum));
        return counts;
    }

    private static Paged<Board.Row> paged(
            List<TreeOnBoard> chosen,
            @Nullable PageRequest page,
            Function<TreeOnBoard, Board.Row> row) {
        if (page == null) {
            var all = chosen.stream().map(row).toList();
            return new Paged<>(all, 0, Math.max(1, all.size()), all.size());
        }
        var shown =
                chosen.stream()
                        .skip((long) page.page() * page.size())
                        .limit(page.size())
                        .map(row)
                        .toList();
        return Paged.of(shown, page, chosen.size());
    }

    private static Board.Row row(Headlines headlines, TreeOnBoard shown) {
        var lead = shown.lead();
        var gathered = shown.day();
        var tree = gathered.tree();
        var step = lead.step();
        var standing = lead.standing();
        var code = step != null ? step.technique() : standing != null ? standing.technique() : null;
        return new Board.Row(
                tree.id(),
                tree.label(),
                gathered.content().kindOf(tree.species()).common(),
                tree.keeperId(),
                shown.keeper(),
                lead.headline(),
                code,
                code == null ? null : gathered.content().titleOf(code),
                step == null ? null : step.id(),
                verdicts(gathered.standings()),
                headlines.sentence(lead),
                Headlines.opening(lead),
                shown.stage());
    }

    private static Map<Verdict, Integer> verdicts(List<Standing> standings) {
        var counts = new EnumMap<Verdict, Integer>(Verdict.class);
        standings.forEach(standing -> counts.merge(standing.verdict(), 1, Integer::sum));
        return counts;
    }
}
