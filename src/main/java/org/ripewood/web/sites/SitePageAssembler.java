package org.ripewood.web.sites;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.ReadingsImport;
import org.ripewood.trees.TreeSites;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/** Lays out what the page of a site shows. */
@ApplicationScoped
class SitePageAssembler {

    private static final List<Label> LABELS =
            List.of(
                    Label.of("name", "Name"),
                    Label.of("place", "Latitude and longitude, °"),
                    Label.of("zone", "Time zone"),
                    new Label(
                            "schoolGround",
                            "The school's own ground",
                            own -> own.equals("true") ? "yes" : "no"),
                    Label.of("meanMinimaCelsius", "Mean minima, °C, January to December"),
                    Label.of("meanMaximaCelsius", "Mean maxima, °C, January to December"));

    private final TreeSites treeSites;
    private final People people;
    private final EditConflicts clashes;
    private final CourseContent content;
    private final Today today;

    SitePageAssembler(
            TreeSites treeSites,
            People people,
            EditConflicts clashes,
            CourseContent content,
            Today today) {
        this.treeSites = treeSites;
        this.people = people;
        this.clashes = clashes;
        this.content = content;
        this.today = today;
    }

    /**
     * @param species code of the one whose season is shown; the most frequent there when null
     */
    SitePageModel lay(
            Actor actor,
            long siteId,
            @Nullable String species,
            FormState typed,
            @Nullable ReadingsImport taken) {
        var known = treeSites.get(actor, siteId);
        var all = content.inForce().species();
        var here = known.species().stream().map(all::get).filter(Objects::nonNull).toList();
        var others =
                all.values().stream()
                        .filter(one -> !here.contains(one))
                        .sorted(Comparator.comparing(Species::common))
                        .toList();
        var chosen = species == null ? first(here, others) : all.get(species);
        if (chosen == null) {
            throw Refused.notFound("species", String.valueOf(species));
        }
        return new SitePageModel(
                known,
                treeSites.mayChange(actor, siteId),
                here,
                others,
                chosen,
                treeSites.season(actor, siteId, chosen.code()),
                today.date(),
                clashes.mend(
                        typed,
                        SitePageModel.described(known.site()),
                        new EditConflicts.About("site", siteId, LABELS, people::names)),
                taken);
    }

    private static Species first(List<Species> here, List<Species> others) {
        return here.isEmpty() ? others.get(0) : here.get(0);
    }
}
