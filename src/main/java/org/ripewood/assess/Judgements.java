package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * Judgements by rubric: drafted, signed, and never edited after that.
 *
 * <p>A later judgement outweighs an earlier one; a mistake is corrected by one that takes its
 * place. Whoever signs may ask for a second judge: until another instructor has signed a judgement
 * of the same, nobody but the first judge sees the level, and it counts for nothing.
 */
@ApplicationScoped
@Transactional
public class Judgements {

    /** Days in which two looks at the same tree or student are looks at the same state of it. */
    static final int SAME_STATE_DAYS = 30;

    private final JudgementRows rows;
    private final JudgementReach reach;
    private final JudgementChecks checks;
    private final Feeding feeding;
    private final CourseContent content;
    private final Today today;

    Judgements(
            JudgementRows rows,
            JudgementReach reach,
            JudgementChecks checks,
            Feeding feeding,
            CourseContent content,
            Today today) {
        this.rows = rows;
        this.reach = reach;
        this.checks = checks;
        this.feeding = feeding;
        this.content = content;
        this.today = today;
    }

    /** Judgements the actor may see, latest first, superseded ones included and marked. */
    public Paged<Judgement> list(Actor actor, Judged of, PageRequest page) {
        reach.require(actor, of);
        var query = rows.seenBy(actor.personId(), of);
        var items = query.page(page.page(), page.size()).list();
        return Paged.of(items.stream().map(JudgementEntity::told).toList(), page, query.count());
    }

    /** The latest open judgement by each rubric that has one. */
    public List<Judgement> latest(Actor actor, Judged of) {
        reach.require(actor, of);
        return rows.latest(of).stream().map(JudgementEntity::told).toList();
    }

    /** A judgement the actor may see; 404 otherwise. */
    public Judgement get(Actor actor, long id) {
        var row = rows.findByIdOptional(id).orElseThrow(() -> notFound(id));
        requireSeen(actor, row);
        return row.told();
    }

    /** The actor's own draft by a rubric. */
    public Optional<Judgement> findDraft(Actor actor, Judged of, String rubric) {
        return rows.draft(draftOf(actor, of, rubric)).map(JudgementEntity::told);
    }

    /** Begins a draft; 409 when the actor has one by the same rubric of the same. */
    public Judgement begin(Actor actor, Judged of, NewJudgement judgement) {
        reach.requireJudge(actor, of);
        reach.requireHere(actor, of);
        checks.check(actor, of, judgement);
        var row = new JudgementEntity();
        row.rubric = judgement.rubric();
        row.treeId = of.isTree() ? of.id() : null;
        row.studentId = of.isTree() ? null : of.id();
        row.byId = actor.personId();
        row.draftOf = draftOf(actor, of, judgement.rubric());
        fill(row, judgement);
        if (rows.draft(row.draftOf).isPresent()) {
            throw draftedAlready();
        }
        try {
            rows.persistAndFlush(row);
        } catch (ConstraintViolationException quicker) {
            throw draftedAlready();
        }
        return row.told();
    }

    /** Changes the actor's own draft; 412 when the version is not the current one. */
    public Judgement change(Actor actor, long id, long version, NewJudgement judgement) {
        var row = own(actor, id, version);
        requireDraft(row);
        if (!row.rubric.equals(judgement.rubric())) {
            throw Refused.invalid(
                    "rubric",
                    "Expected “%s”, by which the draft was begun; found “%s”."
                            .formatted(row.rubric, judgement.rubric()));
        }
        reach.requireJudge(actor, row.of());
        checks.check(actor, row.of(), judgement);
        fill(row, judgement);
        rows.flush();
        return row.told();
    }

    /**
     * Begins a draft, or changes the one there is.
     *
     * @param version of the actor's own draft; null to begin one
     */
    public Judgement keep(Actor actor, Judged of, NewJudgement judgement, @Nullable Long version) {
        if (version == null) {
            return begin(actor, of, judgement);
        }
        var draft = rows.draft(draftOf(actor, of, judgement.rubric()));
        var id = draft.orElseThrow(() -> Refused.stale("draft")).id();
        return change(actor, id, version, judgement);
    }

    /** Keeps a judgement as {@link #keep} does and signs it, or does neither. */
    public Judgement sign(Actor actor, Judged of, NewJudgement judgement, @Nullable Long version) {
        var kept = keep(actor, of, judgement, version);
        return sign(actor, kept.id(), kept.version());
    }

    /** Throws the actor's own draft away; answers what it was. */
    public Judgement discard(Actor actor, long id, long version) {
        var row = own(actor, id, version);
        requireDraft(row);
        rows.delete(row);
        return row.told();
    }

    /**
     * Signs the actor's own draft. What waited for a second judge is opened by it; this one waits
     * itself when it asks for a second judge and is not the second.
     */
    public Judgement sign(Actor actor, long id, long version) {
        var row = own(actor, id, version);
        requireDraft(row);
        if (row.level == null) {
            throw Refused.invalid("level", "A judgement is signed with a level; none was chosen.");
        }
        reach.requireJudge(actor, row.of());
        var again =
                new NewJudgement(
                        row.rubric,
                        row.level,
                        row.judgedOn,
                        row.note,
                        row.secondWanted,
                        row.corrects);
        // the content may have changed since the draft was kept
        checks.check(actor, row.of(), again);
        var waiting =
                rows.waiting(
                        row.of(), row.rubric, row.byId, today.date().minusDays(SAME_STATE_DAYS));
        row.signedAt = today.now();
        row.contentRevision = content.inForce().revision();
        row.draftOf = null;
        row.blind = !waiting.isEmpty();
        var takesPlace = takePlace(row);
        if (takesPlace || !row.secondWanted || row.blind) {
            open(row);
        }
        waiting.forEach(this::open);
        rows.flush();
        return row.told();
    }

    /** Shows the actor's own signed judgement without waiting for a second judge any longer. */
    public Judgement open(Actor actor, long id, long version) {
        var row = own(actor, id, version);
        if (!row.told().waitsForSecond()) {
            throw Refused.conflict(
                    "This judgement does not wait for a second judge.",
                    row.supersededBy == null ? null : "Maybe open the one that corrected it.");
        }
        open(row);
        rows.flush();
        return row.told();
    }

    /**
     * Marks what is corrected.
     *
     * @return whether it was open, so that its correction has to be as well
     */
    private boolean takePlace(JudgementEntity row) {
        var earlier = row.corrects == null ? null : rows.findById(row.corrects);
        if (earlier == null) {
            return false;
        }
        earlier.supersededBy = row.id;
        row.secondWanted = earlier.secondWanted && earlier.openedAt == null;
        return earlier.openedAt != null;
    }

    private void open(JudgementEntity row) {
        row.openedAt = today.now();
        feeding.feed(row, checks.rubric(row.rubric));
    }

    private void fill(JudgementEntity row, NewJudgement judgement) {
        row.level = judgement.level();
        row.judgedOn = judgement.judgedOn();
        row.note = judgement.note();
        row.secondWanted = judgement.wantsSecond();
        row.corrects = judgement.corrects();
        row.keptAt = today.now();
    }

    private void requireSeen(Actor actor, JudgementEntity row) {
        if (row.openedAt == null && row.byId != actor.personId()) {
            throw notFound(row.id());
        }
        if (!reach.reaches(actor, row.of())) {
            throw notFound(row.id());
        }
    }

    /** The actor's own, locked; what others judged is told as not there. */
    private JudgementEntity own(Actor actor, long id, long version) {
        var row = rows.toChange(id).orElseThrow(() -> notFound(id));
        requireSeen(actor, row);
        if (row.byId != actor.personId()) {
            throw Refused.forbidden("A judgement is changed by its own judge only.");
        }
        reach.requireHere(actor, row.of());
        if (row.version != version) {
            throw Refused.stale("judgement");
        }
        return row;
    }

    private static void requireDraft(JudgementEntity row) {
        if (row.signedAt != null) {
            throw Refused.conflict(
                    "The judgement is signed and stays as it is.",
                    "Maybe judge again, or correct it by a new judgement.");
        }
    }

    private static Refused draftedAlready() {
        return Refused.conflict(
                "You have a draft by this rubric already.", "Maybe go on with that one.");
    }

    private static Refused notFound(long id) {
        return Refused.notFound("judgement", id);
    }

    private static String draftOf(Actor actor, Judged of, @Nullable String rubric) {
        return "%d/%s/%s/%d".formatted(actor.personId(), rubric, of.subject(), of.id());
    }
}
