package org.ripewood.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WorkClock;
import org.ripewood.core.season.WorkClocks;

/** Makes a species of its file. */
final class SpeciesBuilding {

    private final Clocks clocks;

    SpeciesBuilding(ContentDocuments shelf) {
        this.clocks = new Clocks(shelf);
    }

    Species species(Part species) {
        var hardiness = species.at("hardiness");
        var repotting = species.at("repotting");
        var young = repotting.each("youngYears");
        var old = repotting.each("oldYears");
        var callus = species.at("callus");
        var compartment = species.at("compartment");
        var defoliation = species.at("defoliation");
        return new Species(
                traits(species),
                species.requireText("latin"),
                species.requireText("common"),
                species.requireText("flushes"),
                hardiness.requireInt("zoneMin"),
                hardiness.requireInt("zoneMax"),
                hardiness.requireText("source"),
                repotting.texts("stages"),
                repotting.requireText("source"),
                years(young.get(0)),
                years(young.get(1)),
                years(old.get(0)),
                years(old.get(1)),
                callus.requireText("pace"),
                callus.requireText("note"),
                callus.requireText("source"),
                compartment.requireText("strength"),
                compartment.requireText("source"),
                species.requireText("backbudding"),
                species.at("maxRootShare").requireText("source"),
                defoliation.requireText("allowed"),
                defoliation.requireText("note"),
                defoliation.requireText("source"),
                species.at("baseCelsius").number("value"),
                species.at("baseCelsius").requireText("source"),
                rootKill(species.at("rootKillCelsius")),
                species.at("rootKillCelsius").text("source"),
                shoots(species.at("shoots")),
                species.at("shoots").requireText("source"),
                species.each("toxicity").stream().map(SpeciesBuilding::toxicity).toList(),
                species.requireText("text"));
    }

    private Traits traits(Part species) {
        return new Traits(
                species.requireText("code"),
                Habit.valueOf(species.requireText("habit").toUpperCase(Locale.ROOT)),
                CrossReferences.groupsOf(species),
                species.at("maxRootShare").number("value"),
                Recovery.Pace.valueOf(
                        species.at("recovery").requireText("pace").toUpperCase(Locale.ROOT)),
                clocks.of(species));
    }

    private static ShootLengths shoots(Part shoots) {
        return new ShootLengths(
                shoots.number("weak"),
                shoots.number("fair"),
                shoots.number("potStrong"),
                shoots.number("groundStrong"));
    }

    private static int years(Part years) {
        return (int) years.number();
    }

    private static @Nullable Double rootKill(Part rootKill) {
        return rootKill.isThere() ? rootKill.number("value") : null;
    }

    private static Species.Toxicity toxicity(Part toxicity) {
        return new Species.Toxicity(
                toxicity.requireText("parts"),
                toxicity.requireText("effect"),
                toxicity.requireText("avoid"),
                toxicity.requireText("source"));
    }

    /**
     * Where the files say when a species bears each kind of work: the species itself goes before
     * its groups, and of those the one that stands last in groups.yaml, which goes from general to
     * particular. Root work stands with the species alone.
     */
    static final class Clocks {

        static final String BLEEDING = "bleeding";

        private final List<Part> groups;

        Clocks(ContentDocuments shelf) {
            this.groups = shelf.entries(ContentKind.GROUPS, "groups");
        }

        /** The stages of a kind of work, where they stand; null when nobody has said. */
        @Nullable Part stages(Part species, WorkClock clock) {
            if (clock == WorkClock.ROOT_WORK) {
                var stages = species.at("repotting").at("stages");
                return stages.isThere() ? stages : null;
            }
            return said(species, clock.code());
        }

        private @Nullable Part said(Part species, String name) {
            var own = species.at("clocks");
            if (own.has(name)) {
                return own.at(name);
            }
            var belongs = CrossReferences.groupsOf(species);
            Part found = null;
            for (var group : groups) {
                if (belongs.contains(group.text("code")) && group.at("clocks").has(name)) {
                    found = group.at("clocks").at(name);
                }
            }
            return found;
        }

        /** The stages in which cuts bleed; none where nobody says that they do. */
        List<StageRange> bleeding(Part species) {
            return ranges(said(species, BLEEDING));
        }

        /**
         * All that is said of a species; ranges that are none are left out, the schema tells of
         * them.
         */
        WorkClocks of(Part species) {
            var open = new EnumMap<WorkClock, List<WorkClocks.Stages>>(WorkClock.class);
            for (var clock : WorkClock.values()) {
                var stages = stages(species, clock);
                if (stages != null) {
                    open.put(clock, List.of(WorkClocks.Stages.of(ranges(stages))));
                }
            }
            var late = species.at("repotting").at("lateSummer");
            if (late.isThere() && open.containsKey(WorkClock.ROOT_WORK)) {
                var both = new ArrayList<>(open.get(WorkClock.ROOT_WORK));
                both.add(
                        new WorkClocks.Stages(
                                ranges(late.at("stages")),
                                late.requireInt("growingDaysLeft"),
                                late.number("notAboveCelsius")));
                open.put(WorkClock.ROOT_WORK, both);
            }
            var shelter = species.at("shelterBelowCelsius");
            return new WorkClocks(
                    open,
                    bleeding(species),
                    ranges(species.at("flowering").at("fade")),
                    shelter.isThere() ? shelter.number("value") : null);
        }

        static List<StageRange> ranges(@Nullable Part stages) {
            if (stages == null) {
                return List.of();
            }
            return stages.each().stream()
                    .map(Part::text)
                    .filter(text -> text != null && text.matches(SeasonCheck.STAGES))
                    .map(StageRange::parse)
                    .toList();
        }
    }
}
