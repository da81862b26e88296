package org.ripewood.web.sites;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Species;
import org.ripewood.pictures.Phase;
import org.ripewood.pictures.SeasonDrawing;
import org.ripewood.pictures.SeasonPicture;
import org.ripewood.sites.KnownSite;
import org.ripewood.sites.PlaceText;
import org.ripewood.sites.ReadingsImport;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteSeason;
import org.ripewood.sites.Zone;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;
import org.ripewood.web.kit.TextFormat;

/**
 * All that the page of a site shows.
 *
 * @param keeps whether the reader may change it
 * @param here species that stand there, the most frequent first
 * @param others all other species
 * @param chosen the species whose season is shown
 * @param taken what an import has just kept; null when there was none
 */
record SitePageModel(
        KnownSite known,
        boolean keeps,
        List<Species> here,
        List<Species> others,
        Species chosen,
        SiteSeason season,
        LocalDate today,
        FormState typed,
        @Nullable ReadingsImport taken) {

    private static final int DAYS_AHEAD = 400;

    public Site site() {
        return known.site();
    }

    public List<String> months() {
        return List.of(Month.values()).stream()
                .map(month -> month.getDisplayName(TextStyle.FULL, Locale.UK))
                .toList();
    }

    public PictureFormat picture() {
        var place = chosen.common() + ", " + site().name();
        var drawing =
                season.hasWarmth()
                        ? SeasonDrawing.of(
                                place,
                                season.growth(),
                                season.stages(),
                                season.season(),
                                List.of(),
                                today)
                        : SeasonDrawing.withoutWarmth(
                                place, season.stages(), season.season(), today);
        return PictureFormat.of(sheet -> SeasonPicture.of(drawing, sheet));
    }

    /** Where a tree stands in its year today, and what comes next. */
    public String now() {
        int stage = season.stages().stageOn(today);
        var phase = Phase.of(stage);
        var now = "Today: %s (BBCH %02d).".formatted(phase.words(), stage);
        for (var day = today; day.isBefore(today.plusDays(DAYS_AHEAD)); day = day.plusDays(1)) {
            var then = Phase.of(season.stages().stageOn(day));
            if (then != phase) {
                return "%s Next: %s, from about %s."
                        .formatted(now, then.words(), TextFormat.day(day));
            }
        }
        return now + " It stays so the year round.";
    }

    public FormState change() {
        return typed.orFresh("site", described(site()));
    }

    /** The form for it, as it stands now. */
    static FormState described(Site site) {
        return FormState.fresh("site")
                .with("version", site.version())
                .with("name", site.name())
                .with(
                        "place",
                        PlaceForm.written(new PlaceText.Point(site.latitude(), site.longitude())))
                .with("zone", site.zone())
                .with("schoolGround", site.schoolGround())
                .withAll("meanMinimaCelsius", site.meanMinimaCelsius())
                .withAll("meanMaximaCelsius", site.meanMaximaCelsius());
    }

    public Map<String, List<Zone>> zones() {
        return PlaceForm.zones(site().zone().getId());
    }

    public FormState readings() {
        return typed.orFresh("readings", FormState.fresh("readings"));
    }
}
