package org.ripewood.condition;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Work;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.sites.Site;
import org.ripewood.trees.Tree;

/** Builds the record of one tree, entry by entry. */
public final class RecordOf {

    public static final LocalDate CAME = LocalDate.of(2022, 4, 1);
    public static final long INSTRUCTOR = 1;
    public static final long STUDENT = 2;

    /** A maple that grows every day, and whose cuts count from 8 mm. */
    static final TreeKind KIND =
            new TreeKind(
                    ReferenceShoots.of(new ShootLengths(70, 180, 400, 800)),
                    GrowingDays.EVERY_DAY,
                    8,
                    Map.of());

    private final LocalDate on;
    private final List<Observation> observations = new ArrayList<>();
    private final List<Wound> wounds = new ArrayList<>();
    private final List<Branch> branches = new ArrayList<>();
    private final List<ContainerStay> containers = new ArrayList<>();
    private final List<WorkDone> works = new ArrayList<>();
    private double latitude = 50;
    private long entry = 100;

    private RecordOf(LocalDate on) {
        this.on = on;
    }

    public static RecordOf treeOn(LocalDate on) {
        return new RecordOf(on);
    }

    public RecordOf atLatitude(double degrees) {
        latitude = degrees;
        return this;
    }

    public RecordOf seen(Fact fact, double amount, LocalDate day) {
        return seen(fact, Value.of(amount), day, Source.INSTRUCTOR);
    }

    public RecordOf seen(Fact fact, Value value, LocalDate day, Source source) {
        observations.add(observation(fact, value, day, source, null, null, null));
        return this;
    }

    public RecordOf diameter(double heightMm, double diameterMm, LocalDate day) {
        observations.add(
                observation(
                        Fact.TRUNK_DIAMETER_MM,
                        Value.of(diameterMm),
                        day,
                        Source.INSTRUCTOR,
                        null,
                        null,
                        heightMm));
        return this;
    }

    public RecordOf branch(long id, BranchRole role) {
        branches.add(new Branch(id, 1, "branch " + id, role, null, null, null, null, null));
        return this;
    }

    public RecordOf branchRead(
            long id, double diameterMm, double trunkMm, LocalDate day, Source source) {
        observations.add(
                observation(
                        Fact.BRANCH_DIAMETER_MM,
                        Value.of(diameterMm),
                        day,
                        source,
                        null,
                        id,
                        null));
        observations.add(
                observation(
                        Fact.TRUNK_AT_BRANCH_MM, Value.of(trunkMm), day, source, null, id, null));
        return this;
    }

    public RecordOf wound(long id, LocalDate made, double widthMm, Source by, Look... looks) {
        wounds.add(wound(id, made, widthMm, by, false, List.of(looks)));
        return this;
    }

    public RecordOf deadwood(long id, LocalDate made, double widthMm) {
        wounds.add(wound(id, made, widthMm, Source.INSTRUCTOR, true, List.of()));
        return this;
    }

    public RecordOf container(String kind, LocalDate since) {
        containers.add(new ContainerStay(entry++, 1, kind, null, null, since));
        return this;
    }

    public RecordOf work(String technique, LocalDate day, double stress, String clock) {
        return work(new Work(technique, day, stress, 100, 0.2, 0.1), clock);
    }

    public RecordOf work(Work work, String clock) {
        works.add(new WorkDone(entry++, 1, work, clock, INSTRUCTOR, null));
        return this;
    }

    public RecordOf shuffled(long seed) {
        var dice = new Random(seed);
        List.of(observations, wounds, branches, containers, works)
                .forEach(entries -> Collections.shuffle(entries, dice));
        return this;
    }

    public TreeRecord record() {
        var site =
                new Site(
                        1,
                        "Lower yard",
                        latitude,
                        8,
                        ZoneId.of("UTC"),
                        false,
                        List.of(),
                        List.of(),
                        0,
                        0);
        return new TreeRecord(
                new Tree(1, 0, "Maple 1", "acer_palmatum", STUDENT, 1, CAME, null, null, null),
                site,
                on,
                observations,
                wounds,
                branches,
                containers,
                works,
                Map.of(INSTRUCTOR, "Ada Reed", STUDENT, "Ben Holt"));
    }

    public Facts facts() {
        return facts(KIND);
    }

    Facts facts(TreeKind kind) {
        var record = record();
        return new FactsOnDay(record, kind)
                .all(
                        record.ledger(Recovery.PLAIN, Set.of()),
                        GrowthDays.plain(),
                        ClosingBelief.of(CallusPace.MODERATE.belief()));
    }

    public Evidence evidence(Fact fact) {
        return facts().find(fact);
    }

    /** A look at a wound. */
    public record Look(LocalDate on, double openMm, Source by) {}

    public static Look look(LocalDate on, double openMm) {
        return new Look(on, openMm, Source.INSTRUCTOR);
    }

    private Wound wound(
            long id,
            LocalDate made,
            double widthMm,
            Source by,
            boolean deadwood,
            List<Look> looks) {
        var readings =
                looks.stream()
                        .map(
                                look ->
                                        observation(
                                                Fact.WOUND_OPEN_MM,
                                                Value.of(look.openMm()),
                                                look.on(),
                                                look.by(),
                                                id,
                                                null,
                                                null))
                        .toList();
        observations.addAll(readings);
        return new Wound(
                id,
                1,
                "left",
                made,
                widthMm,
                widthMm,
                null,
                null,
                deadwood,
                INSTRUCTOR,
                by,
                readings);
    }

    private Observation observation(
            Fact fact,
            Value value,
            LocalDate day,
            Source source,
            Long woundId,
            Long branchId,
            Double heightMm) {
        return new Observation(
                entry++,
                1,
                fact,
                value,
                day,
                source,
                source == Source.INSTRUCTOR ? INSTRUCTOR : STUDENT,
                Instant.EPOCH,
                null,
                woundId,
                branchId,
                heightMm,
                null);
    }
}
