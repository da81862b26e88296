package org.ripewood.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WorkClock;
import org.ripewood.core.season.WorkClocks;

/**
 * Where the files say when a species bears each kind of work: the species itself goes before its
 * groups, and of those the one that stands last in groups.yaml, which goes from general to
 * particular. Root work stands with the species alone.
 */
final class SpeciesClocks {

    static final String BLEEDING = "bleeding";

    private final List<Part> groups;

    SpeciesClocks(ContentDocuments shelf) {
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
     * All that is said of a species; ranges that are none are left out, the schema tells of them.
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
