package org.ripewood.transfer;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.records.BranchRole;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.trees.NewTree;

/** Reads a file of {@code trees/}: a tree and everything seen on it and done to it. */
final class TreeFile {

    private final Rooms rooms;
    private final Script script;
    private final Page page;
    private final Map<String, byte[]> pictures;

    TreeFile(Rooms rooms, Script script, Page page, Map<String, byte[]> pictures) {
        this.rooms = rooms;
        this.script = script;
        this.page = page;
        this.pictures = pictures;
    }

    void read(Entry file) {
        var tree = script.codes().declare(Ref.tree(file.text("code")), file, "code");
        var containers = file.entries("containers");
        var branches = file.entries("branches");
        var wounds = file.entries("wounds");
        var profiles = file.entries("profiles");
        var observations = file.entries("observations");
        var works = file.entries("works");
        var foundDone = file.entries("foundDone");
        var steps = file.entries("steps");
        var photos = file.entries("photos");
        readTree(file, tree);
        containers.forEach(entry -> readContainer(entry, tree));
        branches.forEach(entry -> readBranch(entry, tree));
        wounds.forEach(entry -> readWound(entry, tree));
        profiles.forEach(entry -> readProfile(entry, tree));
        observations.forEach(entry -> readObservations(entry, tree));
        var work = new WorkPart(rooms, script, tree);
        works.forEach(work::readWork);
        foundDone.forEach(work::readFoundDone);
        var assigned = new StepsPart(rooms, script, tree);
        steps.forEach(assigned::read);
        var taken = new PhotosPart(rooms, script, tree, pictures);
        photos.forEach(taken::read);
    }

    private void readTree(Entry file, Ref tree) {
        var label = file.text("label");
        var species = file.text("species");
        var keeper = script.person(file, "keeper");
        var by = script.by(file);
        var site = script.codes().mention(Ref.site(file.text("site")), file.place(), "site");
        var cameOn = file.day("cameOn");
        var origin = file.textOrNull("origin");
        var note = file.textOrNull("note");
        script.add(
                file,
                cameOn,
                register -> {
                    var input =
                            new NewTree(
                                    label,
                                    species,
                                    register.id(keeper),
                                    register.id(site),
                                    cameOn,
                                    origin,
                                    note);
                    var entered = rooms.trees.enter(register.actor(by), rooms.checked(input));
                    register.put(tree, entered.id());
                });
    }

    private void readContainer(Entry entry, Ref tree) {
        var by = script.by(entry);
        var input =
                new NewContainer(
                        entry.text("kind"),
                        entry.textOrNull("description"),
                        entry.numberOrNull("litres"),
                        entry.day("day"));
        script.add(
                entry,
                input.since(),
                register ->
                        rooms.containers.moveTo(
                                register.actor(by), register.id(tree), rooms.checked(input)));
    }

    private void readBranch(Entry entry, Ref tree) {
        var code = tree.part(Ref.Kind.BRANCH, entry.text("code"));
        var branch = script.codes().declare(code, entry, "code");
        var by = script.by(entry);
        var day = entry.day("day");
        var input =
                new NewBranch(
                        entry.text("name"),
                        entry.word("role", BranchRole.class),
                        entry.numberOrNull("heightMm"),
                        entry.numberOrNull("bearingDegrees"));
        var readings = entry.entries("readings");
        script.add(
                entry,
                day,
                register ->
                        register.put(
                                branch,
                                rooms.branches
                                        .add(
                                                register.actor(by),
                                                register.id(tree),
                                                rooms.checked(input))
                                        .id()));
        for (var reading : readings) {
            var seen = seen(reading, tree).onBranch(branch);
            var diameter = reading.text("diameterMm");
            var trunk = reading.text("trunkMm");
            seen.add(reading, Fact.BRANCH_DIAMETER_MM.code(), diameter);
            seen.add(reading, Fact.TRUNK_AT_BRANCH_MM.code(), trunk);
        }
    }

    private void readWound(Entry entry, Ref tree) {
        var code = tree.part(Ref.Kind.WOUND, entry.text("code"));
        var wound = script.codes().declare(code, entry, "code");
        var by = script.by(entry);
        var input =
                new NewWound(
                        entry.text("place"),
                        entry.day("day"),
                        entry.number("firstWidthMm"),
                        entry.number("firstLengthMm"),
                        entry.numberOrNull("heightMm"),
                        entry.numberOrNull("bearingDegrees"),
                        entry.flag("deadwoodByDesign"));
        var readings = entry.entries("readings");
        script.add(
                entry,
                input.madeOn(),
                register ->
                        register.put(
                                wound,
                                rooms.wounds
                                        .add(
                                                register.actor(by),
                                                register.id(tree),
                                                rooms.checked(input))
                                        .id()));
        for (var reading : readings) {
            var open = reading.text("openMm");
            seen(reading, tree).onWound(wound).add(reading, Fact.WOUND_OPEN_MM.code(), open);
        }
    }

    private void readProfile(Entry entry, Ref tree) {
        var seen = seen(entry, tree);
        var diameters = entry.table("diametersMm");
        entry.close();
        diameters.forEach(
                (height, diameter) -> {
                    var heightMm = Entry.parseNumber(height);
                    if (heightMm == null) {
                        page.fault(
                                diameter.line(),
                                "expected a height in mm as key, found \"%s\"".formatted(height));
                    } else if (entry.sound()) {
                        seen.atHeight(heightMm)
                                .add(
                                        Place.of(
                                                page.file(),
                                                diameter.line(),
                                                "diameter at %s mm".formatted(height)),
                                        Fact.TRUNK_DIAMETER_MM.code(),
                                        diameter.text());
                    }
                });
    }

    private void readObservations(Entry entry, Ref tree) {
        var seen = seen(entry, tree);
        var facts = entry.table("facts");
        entry.close();
        facts.forEach(
                (fact, cell) -> {
                    if (Fact.find(fact).isEmpty()) {
                        var known = java.util.Arrays.stream(Fact.values()).map(Fact::code).toList();
                        page.fault(
                                cell.line(),
                                "there is no fact %s.%s"
                                        .formatted(fact, Suggestion.maybe(known, fact)));
                    } else if (entry.sound()) {
                        seen.add(Place.of(page.file(), cell.line(), fact), fact, cell.text());
                    }
                });
    }

    private Seen seen(Entry entry, Ref tree) {
        return new Seen(
                tree,
                script.by(entry),
                entry.day("day"),
                entry.textOrNull("note"),
                null,
                null,
                null);
    }

    /** Who looked when at what; the same for all facts of one look. */
    private final class Seen {

        private final Ref tree;
        private final Ref by;
        private final LocalDate day;
        private final @Nullable String note;
        private final @Nullable Ref wound;
        private final @Nullable Ref branch;
        private final @Nullable Double heightMm;

        Seen(
                Ref tree,
                Ref by,
                LocalDate day,
                @Nullable String note,
                @Nullable Ref wound,
                @Nullable Ref branch,
                @Nullable Double heightMm) {
            this.tree = tree;
            this.by = by;
            this.day = day;
            this.note = note;
            this.wound = wound;
            this.branch = branch;
            this.heightMm = heightMm;
        }

        Seen onWound(Ref on) {
            return new Seen(tree, by, day, note, on, null, null);
        }

        Seen onBranch(Ref on) {
            return new Seen(tree, by, day, note, null, on, null);
        }

        Seen atHeight(double mm) {
            return new Seen(tree, by, day, note, null, null, mm);
        }

        void add(Entry entry, String fact, String value) {
            entry.close();
            if (entry.sound()) {
                add(entry.place(), fact, value);
            }
        }

        void add(Place place, String fact, String value) {
            script.add(
                    place,
                    day,
                    register -> {
                        var input =
                                new NewObservation(
                                        fact,
                                        value,
                                        day,
                                        note,
                                        wound == null ? null : register.id(wound),
                                        branch == null ? null : register.id(branch),
                                        heightMm,
                                        null);
                        rooms.observations.observe(
                                register.actor(by), register.id(tree), rooms.checked(input));
                    });
        }
    }
}
