package org.ripewood.readiness;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.people.Roster;
import org.ripewood.photos.FrontPhotosUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.meters.Measured;
import org.ripewood.platform.meters.Meter;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/**
 * Makes a course's readiness sheet, in a number of queries that does not depend on how many trees
 * it has; for those who run the course.
 */
@ApplicationScoped
@Transactional
public class ReadinessMaker {

    private final Courses courses;
    private final TreesUnchecked trees;
    private final SubjectGatherer gatherer;
    private final CourseContent content;
    private final FrontPhotosUnchecked photos;

    ReadinessMaker(
            Courses courses,
            TreesUnchecked trees,
            SubjectGatherer gatherer,
            CourseContent content,
            FrontPhotosUnchecked photos) {
        this.courses = courses;
        this.trees = trees;
        this.gatherer = gatherer;
        this.content = content;
        this.photos = photos;
    }

    /** A page of a course's sheet; 403 and 404 as for the course, 400 for an unknown code. */
    @Measured(Meter.BOARD_MADE)
    public ReadinessSheet make(
            Actor actor, long courseId, LocalDate on, ReadinessAsked asked, PageRequest page) {
        return sheet(courses.roster(actor, courseId), on, asked, page);
    }

    /** The same of a course whose members were just read. */
    @Measured(Meter.BOARD_MADE)
    public ReadinessSheet make(
            Roster roster, LocalDate on, ReadinessAsked asked, PageRequest page) {
        return sheet(roster, on, asked, page);
    }

    /** The same with all rows the filter leaves, on one page. */
    public ReadinessSheet whole(Actor actor, long courseId, LocalDate on, ReadinessAsked asked) {
        return sheet(courses.roster(actor, courseId), on, asked, null);
    }

    private ReadinessSheet sheet(
            Roster roster, LocalDate on, ReadinessAsked asked, @Nullable PageRequest page) {
        roster.requireRuns("its readiness sheet");
        var students =
                roster.students().stream().collect(Collectors.toMap(Person::id, person -> person));
        var kept = students.isEmpty() ? List.<Tree>of() : trees.ofKeepers(students.keySet());
        var gathered = gatherer.of(kept, students.values(), on);
        var inForce = gathered.isEmpty() ? content.inForce() : gathered.get(0).content();
        var leading = new LeadingTechnique(new TechniquePriority(inForce).byCode());
        var all = gathered.stream().map(day -> TreeRead.of(day, leading)).toList();
        var styling = StylingHeld.ofRead(all, on);
        var filter = new ReadinessFilter(inForce, roster, asked, styling.by());
        var chosen =
                all.stream().filter(filter::shows).sorted(ReadinessOrder.of(asked.sort())).toList();
        var shown = page == null ? chosen : on(page, chosen);
        var rows =
                new RowMaker(
                        new CellMaker(inForce, leading, filter.technique()),
                        students,
                        photos.of(shown.stream().map(tree -> tree.day().tree().id()).toList()));
        var told = new ReadinessCounts(inForce, all);
        return new ReadinessSheet(
                roster.course().id(),
                on,
                works(inForce),
                styling,
                all.size(),
                told.heldFrom(),
                told.heldBy(),
                told.stages(),
                told.species(),
                told.care(),
                paged(shown.stream().map(rows::row).toList(), page, chosen.size()));
    }

    private static List<ReadinessSheet.Work> works(Content content) {
        return content.works().stream()
                .map(work -> new ReadinessSheet.Work(work.code(), work.title(), work.note()))
                .toList();
    }

    private static List<TreeRead> on(PageRequest page, List<TreeRead> chosen) {
        return chosen.stream().skip((long) page.page() * page.size()).limit(page.size()).toList();
    }

    private static Paged<ReadinessSheet.Row> paged(
            List<ReadinessSheet.Row> shown, @Nullable PageRequest page, int total) {
        return page == null
                ? new Paged<>(shown, 0, Math.max(1, total), total)
                : Paged.of(shown, page, total);
    }

    /** Makes rows of read trees. */
    private record RowMaker(CellMaker cells, Map<Long, Person> students, Map<Long, Long> photos) {

        ReadinessSheet.Row row(TreeRead read) {
            var day = read.day();
            var tree = day.tree();
            var keeper = students.get(tree.keeperId());
            var stage = day.stage();
            var styling = read.styling();
            return new ReadinessSheet.Row(
                    tree.id(),
                    tree.label(),
                    day.content().kindOf(tree.species()).common(),
                    tree.keeperId(),
                    keeper == null ? "" : keeper.name(),
                    photos.get(tree.id()),
                    new ReadinessSheet.Stage(
                            stage.code(),
                            stage.title(),
                            stage.order(),
                            day.openings().stages().get(stage.order() - 1).howFar()),
                    styling == null
                            ? null
                            : new ReadinessSheet.Next(
                                    styling.technique(),
                                    day.content().titleOf(styling.technique()),
                                    styling.verdict()),
                    read.freeOn(),
                    cells.cells(read));
        }
    }
}
