package org.ripewood.api.trees;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.core.season.Habit;
import org.ripewood.sites.SeasonBasis;
import org.ripewood.sites.SiteSeason;

/**
 * A growing season at a site.
 *
 * @param basis what it is worked out from
 * @param firstDay midwinter, from which degree-days count
 */
record SeasonAnswer(
        long siteId,
        SeasonBasis basis,
        Habit habit,
        double baseCelsius,
        LocalDate firstDay,
        List<SiteSeason.Day> days) {

    static SeasonAnswer of(SiteSeason season) {
        return new SeasonAnswer(
                season.site().id(),
                season.basis(),
                season.habit(),
                season.baseCelsius(),
                season.season().firstDay(),
                season.days());
    }
}
