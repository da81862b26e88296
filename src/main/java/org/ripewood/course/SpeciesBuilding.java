package org.ripewood.course;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.season.Habit;

/** Makes a species of its file. */
final class SpeciesBuilding {

    private final SpeciesClocks clocks;

    SpeciesBuilding(ContentDocuments shelf) {
        this.clocks = new SpeciesClocks(shelf);
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
}
