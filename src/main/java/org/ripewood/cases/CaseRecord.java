package org.ripewood.cases;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.course.Content;
import org.ripewood.course.JudgementCase;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.sites.Site;
import org.ripewood.steps.TechniqueWork;
import org.ripewood.trees.Tree;

/** Writes the record a tree would have had if everything a case tells had been entered. */
final class CaseRecord {

    private static final long TREE = 1;
    private static final long INSTRUCTOR = 1;
    private static final long STUDENT = 2;

    private final JudgementCase told;
    private final Content content;
    private final LocalDate on;
    private final List<Observation> observations = new ArrayList<>();
    private final List<Wound> wounds = new ArrayList<>();
    private final List<Branch> branches = new ArrayList<>();
    private final List<ContainerStay> containers = new ArrayList<>();
    private final List<WorkDone> works = new ArrayList<>();
    private long entry = 1;

    private CaseRecord(JudgementCase told, Content content, LocalDate on) {
        this.told = told;
        this.content = content;
        this.on = on;
    }

    /**
     * The record.
     *
     * @param site of the case's climate
     */
    static TreeRecord of(JudgementCase told, Content content, Site site, LocalDate on) {
        return new CaseRecord(told, content, on).write(site);
    }

    /** The last day each technique was signed off. */
    static Map<String, LocalDate> signedOff(JudgementCase told, LocalDate on) {
        return told.tree().signedOff().stream()
                .collect(
                        Collectors.toMap(
                                JudgementCase.Done::technique,
                                done -> on.minusDays(done.daysAgo()),
                                (one, other) -> one.isAfter(other) ? one : other));
    }

    private TreeRecord write(Site site) {
        var tree = told.tree();
        // What follows from a sign-off is entered first: on the same day what was seen counts.
        tree.signedOff().forEach(this::signOff);
        tree.works().forEach(this::work);
        tree.known()
                .forEach(seen -> see(seen.fact(), seen.value(), day(seen.daysAgo()), seen.eye()));
        tree.profile().forEach(this::mark);
        tree.wounds().forEach(this::wound);
        tree.branches().forEach(this::branch);
        stay(tree.container());
        return new TreeRecord(
                new Tree(
                        TREE,
                        0,
                        told.title(),
                        told.species(),
                        STUDENT,
                        site.id(),
                        cameOn(),
                        null,
                        null,
                        null),
                site,
                on,
                observations,
                wounds,
                branches,
                containers,
                works,
                Map.of(INSTRUCTOR, "an instructor", STUDENT, "a student"));
    }

    private LocalDate day(int daysAgo) {
        return on.minusDays(daysAgo);
    }

    /** Nothing is known of it from before it came. */
    private LocalDate cameOn() {
        return observations.stream()
                .map(Observation::observedOn)
                .min(Comparator.naturalOrder())
                .orElse(on);
    }

    private void signOff(JudgementCase.Done done) {
        work(done);
        content.technique(done.technique())
                .effects()
                .forEach(
                        effect ->
                                see(
                                        effect.fact(),
                                        effect.value(),
                                        day(done.daysAgo()),
                                        Source.INSTRUCTOR));
    }

    private void work(JudgementCase.Done done) {
        var technique = content.technique(done.technique());
        var work =
                TechniqueWork.of(
                        technique, day(done.daysAgo()), done.foliageShare(), done.rootShare());
        works.add(new WorkDone(entry++, TREE, work, technique.startsClock(), INSTRUCTOR, null));
    }

    private void mark(JudgementCase.Mark mark) {
        observations.add(
                observation(
                        Fact.TRUNK_DIAMETER_MM,
                        Value.of(mark.diameterMm()),
                        day(mark.daysAgo()),
                        Source.INSTRUCTOR,
                        null,
                        null,
                        mark.heightMm()));
    }

    private void wound(JudgementCase.Cut cut) {
        long id = entry++;
        var readings =
                cut.looks().stream()
                        .map(
                                look ->
                                        observation(
                                                Fact.WOUND_OPEN_MM,
                                                Value.of(look.openMm()),
                                                day(look.daysAgo()),
                                                look.eye(),
                                                id,
                                                null,
                                                null))
                        .toList();
        observations.addAll(readings);
        wounds.add(
                new Wound(
                        id,
                        TREE,
                        "wound " + id,
                        day(cut.madeDaysAgo()),
                        cut.widthMm(),
                        cut.lengthMm(),
                        null,
                        null,
                        cut.deadwoodByDesign(),
                        INSTRUCTOR,
                        Source.INSTRUCTOR,
                        readings));
    }

    private void branch(JudgementCase.Grown grown) {
        long id = entry++;
        var role = BranchRole.valueOf(grown.role().toUpperCase(Locale.ROOT));
        branches.add(
                new Branch(
                        id,
                        TREE,
                        grown.name(),
                        role,
                        null,
                        null,
                        null,
                        grown.diameterMm(),
                        grown.trunkMm()));
        onBranch(Fact.BRANCH_DIAMETER_MM, grown.diameterMm(), id, day(grown.daysAgo()));
        onBranch(Fact.TRUNK_AT_BRANCH_MM, grown.trunkMm(), id, day(grown.daysAgo()));
    }

    private void onBranch(Fact fact, @Nullable Double mm, long branchId, LocalDate day) {
        if (mm != null) {
            observations.add(
                    observation(fact, Value.of(mm), day, Source.INSTRUCTOR, null, branchId, null));
        }
    }

    private void stay(JudgementCase.@Nullable Stay stay) {
        if (stay != null) {
            containers.add(
                    new ContainerStay(
                            entry++, TREE, stay.kind(), null, null, day(stay.sinceDaysAgo())));
        }
    }

    private void see(Fact fact, Value value, LocalDate day, Source eye) {
        observations.add(observation(fact, value, day, eye, null, null, null));
    }

    private Observation observation(
            Fact fact,
            Value value,
            LocalDate day,
            Source eye,
            @Nullable Long woundId,
            @Nullable Long branchId,
            @Nullable Double heightMm) {
        return new Observation(
                entry++,
                TREE,
                fact,
                value,
                day,
                eye,
                eye == Source.STUDENT ? STUDENT : INSTRUCTOR,
                day.atStartOfDay().toInstant(ZoneOffset.UTC),
                null,
                woundId,
                branchId,
                heightMm,
                null);
    }
}
