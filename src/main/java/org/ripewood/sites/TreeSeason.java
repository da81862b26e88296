package org.ripewood.sites;

import java.time.LocalDate;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.GrowthTime;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.SeasonModel;
import org.ripewood.core.season.StageClock;
import org.ripewood.core.season.StageDays;
import org.ripewood.core.season.TypicalYear;

/** The year of one kind of tree at one site. */
public sealed interface TreeSeason {

    GrowthDays growth();

    /** Days on which it grows, known even where temperatures are not. */
    GrowingDays growing();

    /** The usual weather of the place, beside the stages. */
    PlaceYear place();

    /** Its stages when nobody has looked. */
    StageClock usual();

    /** Its stages after somebody has. */
    StageClock from(int observedStage, LocalDate observedOn);

    /** At a site whose temperatures nobody has given. */
    record Typical(TypicalYear year) implements TreeSeason {
        @Override
        public GrowthDays growth() {
            return GrowthDays.plain();
        }

        @Override
        public GrowingDays growing() {
            return new StageDays(year);
        }

        @Override
        public PlaceYear place() {
            return year.place();
        }

        @Override
        public StageClock usual() {
            return year;
        }

        @Override
        public StageClock from(int observedStage, LocalDate observedOn) {
            return year.from(observedStage, observedOn);
        }
    }

    /** By the temperatures of the site. */
    record Modelled(SeasonModel model, GrowthTime growth, StageDays growing) implements TreeSeason {
        @Override
        public PlaceYear place() {
            return model.place();
        }

        @Override
        public StageClock usual() {
            return model;
        }

        @Override
        public StageClock from(int observedStage, LocalDate observedOn) {
            return model.from(observedStage, observedOn);
        }
    }
}
