package org.ripewood.sample;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.archive.SampleRemoval;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.people.Courses;
import org.ripewood.people.Membership;
import org.ripewood.people.People;
import org.ripewood.people.Sample;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.TreeSites;

/** A made-up course that a registrar who teaches adds to try the service, and throws away again. */
@ApplicationScoped
@Transactional(Transactional.TxType.NOT_SUPPORTED)
public class SampleCourses {

    /** Thousands of entries; a slow computer takes a while. */
    private static final int MOST_SECONDS = 600;

    private final Samples samples;
    private final SampleLoading loading;
    private final SampleRemoval removal;
    private final SampleMarks marks;
    private final Courses courses;
    private final People people;
    private final TreeSites sites;
    private final Audit audit;

    SampleCourses(
            Samples samples,
            SampleLoading loading,
            SampleRemoval removal,
            SampleMarks marks,
            Courses courses,
            People people,
            TreeSites sites,
            Audit audit) {
        this.samples = samples;
        this.loading = loading;
        this.removal = removal;
        this.marks = marks;
        this.courses = courses;
        this.people = people;
        this.sites = sites;
        this.audit = audit;
    }

    /**
     * Adds the sample: its trees stand at the school's first site, or at one made for it while the
     * school has none.
     *
     * @return the course, taught by the actor
     * @throws Refused 403 unless the actor is a registrar; 409 unless they also teach, or when
     *     there is a sample already
     */
    public long add(Actor actor) {
        actor.require(Role.REGISTRAR, "add the sample course");
        if (!actor.is(Role.INSTRUCTOR)) {
            throw Refused.conflict(
                    "The sample course is taught by whoever adds it, and you are no instructor.",
                    "Maybe give yourself that role first, under People and courses.");
        }
        long course =
                QuarkusTransaction.requiringNew()
                        .timeout(MOST_SECONDS)
                        .call(
                                () -> {
                                    requireNone(samples.allThereWillBe());
                                    audit.note(Deed.SAMPLE_ADDED, actor.personId());
                                    var loaded = loading.load(actor, firstSite(actor));
                                    samples.mark(
                                            actor,
                                            loaded.courseId(),
                                            loaded.siteId(),
                                            loaded.people());
                                    return loaded.courseId();
                                });
        marks.forget();
        return course;
    }

    private static void requireNone(List<Sample> there) {
        if (!there.isEmpty()) {
            throw Refused.conflict(
                    "There is a sample course already; no second one was added.",
                    "Maybe throw the first away before.");
        }
    }

    /** The one entered first; null while there is none. */
    private @Nullable Long firstSite(Actor actor) {
        return sites.list(actor).stream().map(SiteLine::id).min(Long::compareTo).orElse(null);
    }

    /** The sample, and what goes with it; empty when there is none. Registrars only. */
    public Optional<SampleSheet> get(Actor actor) {
        actor.require(Role.REGISTRAR, "see what the sample course is made of");
        return samples.all().stream().findFirst().map(sample -> sheet(actor, sample));
    }

    /** The same; 404 when there is none. */
    public SampleSheet required(Actor actor) {
        return get(actor).orElseThrow(SampleCourses::none);
    }

    private SampleSheet sheet(Actor actor, Sample sample) {
        var madeUp = samples.peopleOf(sample.courseId());
        var rows = removal.rows(sample.courseId(), madeUp, sample.siteId());
        var roster = courses.roster(actor, sample.courseId());
        return new SampleSheet(
                sample.courseId(),
                roster.course().name(),
                people.names(madeUp).values().stream().sorted().toList(),
                guests(roster.memberships(), madeUp),
                rows.getOrDefault("tree", 0),
                rows.getOrDefault("photo", 0),
                rows.getOrDefault("class_session", 0),
                rows.values().stream().mapToInt(Integer::intValue).sum(),
                site(actor, sample),
                !rows.containsKey("site"));
    }

    private static List<String> guests(List<Membership> all, Set<Long> madeUp) {
        return all.stream()
                .filter(one -> one.leftOn() == null && !madeUp.contains(one.personId()))
                .map(Membership::name)
                .sorted()
                .toList();
    }

    private @Nullable String site(Actor actor, Sample sample) {
        var made = sample.siteId();
        return made == null ? null : sites.get(actor, made).site().name();
    }

    /**
     * Throws the sample away: all of it or nothing. People of the school who belong to it stay at
     * the school, and so do their trees that came to its sessions.
     *
     * @param courseId of the sample that was seen
     * @return what went
     * @throws Refused 403 unless the actor is a registrar; 404 when there is no sample; 412 when it
     *     is another than the one that was seen
     */
    public SampleSheet throwAway(Actor actor, long courseId) {
        actor.require(Role.REGISTRAR, "throw the sample course away");
        var pictures = new ArrayList<String>();
        var gone =
                QuarkusTransaction.requiringNew()
                        .timeout(MOST_SECONDS)
                        .call(
                                () -> {
                                    var sample = locked(courseId);
                                    var sheet = sheet(actor, sample);
                                    audit.note(Deed.SAMPLE_THROWN_AWAY, actor.personId());
                                    pictures.addAll(
                                            removal.remove(
                                                    courseId,
                                                    samples.peopleOf(courseId),
                                                    sample.siteId()));
                                    return sheet;
                                });
        removal.takeAway(pictures);
        marks.forget();
        return gone;
    }

    private Sample locked(long courseId) {
        return samples.lock(courseId)
                .orElseThrow(
                        () -> samples.all().isEmpty() ? none() : Refused.stale("sample course"));
    }

    private static Refused none() {
        return new Refused(
                new Problem(
                        404,
                        "not-found",
                        "Not found",
                        "There is no sample course.",
                        "Maybe it was thrown away already.",
                        List.of()));
    }
}
