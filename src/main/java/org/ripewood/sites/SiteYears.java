package org.ripewood.sites;

import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.GrowthTime;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.SeasonModel;
import org.ripewood.core.season.StageDays;

/** The years of one site by its temperatures, for every kind of tree asked for so far. */
public final class SiteYears {

    private record Kind(Habit habit, double baseCelsius) {}

    private final Climate climate;
    private final LocalDate first;
    private final LocalDate last;
    private final Map<Habit, SeasonModel> models = new ConcurrentHashMap<>();
    private final Map<Habit, StageDays> growing = new ConcurrentHashMap<>();
    private final Map<Kind, TreeSeason> seasons = new ConcurrentHashMap<>();

    SiteYears(Climate climate, LocalDate first, LocalDate last) {
        this.climate = climate;
        this.first = first;
        this.last = last;
    }

    /**
     * Years by monthly means alone.
     *
     * @param site whose means are known
     */
    public static SiteYears ofMeans(Site site, LocalDate first, LocalDate last) {
        var normal = NormalYear.of(site.meanMinimaCelsius(), site.meanMaximaCelsius());
        return new SiteYears(new Climate(site.latitude(), normal), first, last);
    }

    /** The year of one kind of tree. */
    public TreeSeason of(Habit habit, double baseCelsius) {
        return seasons.computeIfAbsent(
                new Kind(habit, baseCelsius), kind -> once(habit, baseCelsius));
    }

    /** For a base nobody's species has; not kept, since there are as many as there are numbers. */
    TreeSeason once(Habit habit, double baseCelsius) {
        var model = model(habit);
        return new TreeSeason.Modelled(
                model,
                GrowthTime.of(model, habit, baseCelsius),
                growing.computeIfAbsent(habit, any -> StageDays.over(model, first, last)));
    }

    private SeasonModel model(Habit habit) {
        return models.computeIfAbsent(habit, asked -> SeasonModel.of(climate, asked, first, last));
    }
}
