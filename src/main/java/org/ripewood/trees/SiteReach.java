package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Refused;
import org.ripewood.platform.Role;

/**
 * Who may see where a site is: those of whose reach a tree stands there, since many a site is
 * somebody's garden. Instructors also see sites without trees, which somebody has to look after;
 * registrars see all. A site's name is no secret.
 */
@ApplicationScoped
class SiteReach {

    private final People people;
    private final TreeRows trees;

    SiteReach(People people, TreeRows trees) {
        this.people = people;
        this.trees = trees;
    }

    /** Out of reach is told like not there; so is its season, which tells the latitude. */
    void require(Actor actor, long siteId) {
        if (!includes(actor, siteId)) {
            throw Refused.notFound("site", siteId);
        }
    }

    private boolean includes(Actor actor, long siteId) {
        var keepers = people.reachable(actor);
        return keepers == null
                || trees.count("siteId = ?1 and keeperId in ?2", siteId, keepers) > 0
                || (actor.is(Role.INSTRUCTOR) && trees.count("siteId", siteId) == 0);
    }

    List<SiteLine> lines(Actor actor, List<Site> sites) {
        var keepers = people.reachable(actor);
        var reached = keepers == null ? Set.<Long>of() : trees.sitesOf(keepers);
        var taken = actor.is(Role.INSTRUCTOR) ? trees.sitesTaken() : new HashSet<Long>();
        return sites.stream()
                .map(
                        site -> {
                            var seen =
                                    keepers == null
                                            || reached.contains(site.id())
                                            || (actor.is(Role.INSTRUCTOR)
                                                    && !taken.contains(site.id()));
                            return new SiteLine(site.id(), site.name(), seen ? site : null);
                        })
                .toList();
    }
}
