package org.ripewood.routes;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.Board;
import org.ripewood.boards.BoardAsked;
import org.ripewood.boards.BoardMaker;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.boards.DayWork;
import org.ripewood.boards.LessonFinder;
import org.ripewood.boards.LessonNeed;
import org.ripewood.boards.TreeOutlooks;
import org.ripewood.boards.WorkFinder;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.meters.Measured;
import org.ripewood.platform.meters.Meter;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Decision;
import org.ripewood.standing.DecisionBook;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.standing.Usefulness;
import org.ripewood.standing.Veil;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.steps.SignOffsWaiting;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepBook;
import org.ripewood.steps.StepReach;
import org.ripewood.steps.StepTeller;
import org.ripewood.steps.Waiting;
import org.ripewood.trees.Trees;

/** How trees stand, what is assigned, reported and signed off. */
@ApplicationScoped
@Transactional
public class Standings {

    private final SubjectGatherer gatherer;
    private final Assigner assigner;
    private final Reports reports;
    private final SignOffs signOffs;
    private final ChecklistMaker checklists;
    private final RouteMaker routes;
    private final BoardMaker boards;
    private final LessonFinder lessons;
    private final WorkFinder work;
    private final SignOffsWaiting waiting;
    private final StepReach reach;
    private final StepBook steps;
    private final StepTeller teller;
    private final DecisionBook decisions;
    private final Trees trees;
    private final Veil veil;

    Standings(
            SubjectGatherer gatherer,
            Assigner assigner,
            Reports reports,
            SignOffs signOffs,
            ChecklistMaker checklists,
            RouteMaker routes,
            BoardMaker boards,
            LessonFinder lessons,
            WorkFinder work,
            SignOffsWaiting waiting,
            StepReach reach,
            StepBook steps,
            StepTeller teller,
            DecisionBook decisions,
            Trees trees,
            Veil veil) {
        this.gatherer = gatherer;
        this.assigner = assigner;
        this.reports = reports;
        this.signOffs = signOffs;
        this.checklists = checklists;
        this.routes = routes;
        this.boards = boards;
        this.lessons = lessons;
        this.work = work;
        this.waiting = waiting;
        this.reach = reach;
        this.steps = steps;
        this.teller = teller;
        this.decisions = decisions;
        this.trees = trees;
        this.veil = veil;
    }

    /** How every technique stands for a tree on a day. */
    public TreeStanding of(Actor actor, long treeId, LocalDate on) {
        var tree = gatherer.one(actor, treeId, on);
        return new TreeStanding(
                treeId,
                on,
                tree.content().revision(),
                tree.standings().stream().map(tree::tell).toList());
    }

    /**
     * READY techniques without an open step, most useful first; none of a tree that left the
     * school.
     */
    public List<TechniqueStanding> proposals(Actor actor, long treeId, LocalDate on) {
        var tree = gatherer.one(actor, treeId, on);
        return tree.tree().left()
                ? List.of()
                : tree.free().stream()
                        .sorted(new Usefulness(tree.content()).mostUsefulFirst())
                        .map(tree::tell)
                        .toList();
    }

    /**
     * Assigns a step; instructors who reach the tree only. Every reason against it must be waivable
     * and waived with a reason.
     */
    public Step assign(Actor actor, long treeId, NewAssignment assignment) {
        trees.requireHere(actor, treeId);
        return assigner.assign(actor, treeId, assignment);
    }

    /** Notes that a technique was already done; instructors only. */
    public Step noteFoundDone(
            Actor actor, long treeId, String technique, LocalDate doneOn, @Nullable String note) {
        trees.requireHere(actor, treeId);
        return assigner.noteFoundDone(actor, treeId, technique, doneOn, note);
    }

    /** A step of a tree within reach; 404 otherwise. */
    public Step getStep(Actor actor, long stepId) {
        return veil.over(actor, teller.told(reach.step(actor, stepId)));
    }

    /** Steps of a tree, latest first. */
    public Paged<Step> steps(Actor actor, long treeId, PageRequest page) {
        trees.get(actor, treeId);
        var found = steps.ofTree(treeId, page);
        var hidden = trees.hiddenKeepers(actor, treeId);
        var told = teller.told(found).stream().map(step -> Veil.over(hidden, step)).toList();
        return Paged.of(told, page, steps.count("treeId", treeId));
    }

    /**
     * The keeper, or an instructor for them, says the step is done; from ASSIGNED or SENT_BACK. 412
     * when the version is not the current one. The same report sent twice counts once.
     */
    public Step report(Actor actor, long stepId, long version, NewReport report) {
        return reports.report(actor, stepId, version, report);
    }

    /**
     * Signs a reported step off: records the work, the wound, the container and the facts it
     * changes. Instructors only, and not on their own trees.
     */
    public Step signOff(Actor actor, long stepId, long version, @Nullable String note) {
        return signOffs.signOff(actor, stepId, version, note);
    }

    /** Sends a reported step back with a note. Instructors only. */
    public Step sendBack(Actor actor, long stepId, long version, String note) {
        return signOffs.sendBack(actor, stepId, version, note);
    }

    /** Takes back a step not yet signed off. Instructors only. */
    public Step withdraw(Actor actor, long stepId, long version, String note) {
        return signOffs.withdraw(actor, stepId, version, note);
    }

    /** A decision as it was. */
    public Decision getDecision(Actor actor, long decisionId) {
        var decision =
                decisions
                        .findByIdOptional(decisionId)
                        .orElseThrow(() -> Refused.notFound("decision", decisionId));
        reach.tree(actor, decision.treeId, "decision", decisionId);
        return veil.over(actor, decisions.told(decision));
    }

    /** A student's checklist for a tree. */
    public Checklist checklist(Actor actor, long treeId, LocalDate on) {
        return checklists.make(actor, treeId, on);
    }

    /**
     * The years from a day on to a goal stage. No transaction is held while they are gone through.
     *
     * @param goal code of the stage, 400 when there is none such; null for the one after the tree's
     *     own
     */
    @Transactional(Transactional.TxType.NOT_SUPPORTED)
    public RouteView route(Actor actor, long treeId, @Nullable String goal, LocalDate on) {
        return routes.make(actor, treeId, goal, on);
    }

    /** A course's board; instructors of the course and registrars only. */
    @Measured(Meter.BOARD_MADE)
    public Board board(
            Actor actor, long courseId, LocalDate on, BoardAsked asked, PageRequest page) {
        return boards.make(actor, courseId, on, asked, page);
    }

    /** The same with all rows the filter leaves, on one page. */
    public Board wholeBoard(Actor actor, long courseId, LocalDate on, BoardAsked asked) {
        return boards.make(actor, courseId, on, asked, null);
    }

    /**
     * Which lessons a person's trees wait for, the one that frees most first; 404 out of reach.
     * Nothing for who is no student: only students have skills to show.
     */
    public List<LessonNeed> lessonsNext(Actor actor, long personId, LocalDate on) {
        return lessons.ofPerson(actor, personId, on);
    }

    /** The same over all students of a course; for those who run it. */
    public List<LessonNeed> lessonsNextOfCourse(Actor actor, long courseId, LocalDate on) {
        return lessons.ofCourse(actor, courseId, on);
    }

    /** Reported steps that wait for this instructor, oldest first. */
    public Paged<Waiting> waitingSignOffs(Actor actor, PageRequest page) {
        return waiting.forInstructor(actor, page);
    }

    /**
     * What could be done with trees of a course on a day, forecasts included; for those who run the
     * course. In the order of the trees asked for; trees that are not there are left out.
     */
    public List<DayWork> workOn(
            Actor actor, long courseId, Collection<Long> treeIds, LocalDate on) {
        return work.on(actor, courseId, treeIds, on);
    }

    /**
     * When each technique could be done on trees of a course, as of today; for those who run it.
     * Trees that are not there are left out.
     */
    public List<TreeOutlooks> outlooks(Actor actor, long courseId, Collection<Long> treeIds) {
        return work.outlooks(actor, courseId, treeIds);
    }
}
