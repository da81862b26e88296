package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.SiteEntered;
import org.ripewood.sites.SiteLine;
import org.ripewood.sites.Sites;

/**
 * Who may see where a site is, since many a site is somebody's garden: who entered it, those of
 * whose reach a tree stands there, instructors while no tree does, for somebody has to look after
 * it, and registrars. The school's own ground everybody sees. A site's name is no secret.
 *
 * <p>A tree is entered, or moved, only where that is seen: a tree opens its site to all who reach
 * it, so whoever could plant anywhere could look everywhere.
 */
@ApplicationScoped
public class SiteReach {

    private final People people;
    private final TreeRows trees;
    private final Sites sites;

    SiteReach(People people, TreeRows trees, Sites sites) {
        this.people = people;
        this.trees = trees;
        this.sites = sites;
    }

    /** Out of reach is told like not there; so is its season, which tells the latitude. */
    public void require(Actor actor, long siteId) {
        if (!includes(actor, siteId)) {
            throw Refused.notFound("site", siteId);
        }
    }

    /** The same where it is named as the place of a tree. */
    void requireForTree(Actor actor, long siteId) {
        if (sites.find(siteId) == null || !includes(actor, siteId)) {
            throw Refused.invalid(
                    "siteId",
                    "there is no site %d at which you may enter a tree. Maybe ask an instructor to enter it there."
                            .formatted(siteId));
        }
    }

    /**
     * Goes on for those who may change a site they see: who entered it, instructors of most whose
     * trees stand there, and registrars. The season of all trees there goes by it.
     */
    public void requireToChange(Actor actor, long siteId, String what) {
        Sites.requireKeeperOfSites(actor, what);
        require(actor, siteId);
        if (!mayChange(actor, siteId)) {
            throw Refused.forbidden(
                    "Only who entered the site, an instructor of most whose trees stand there, and a"
                            + " registrar may %s.".formatted(what));
        }
    }

    /** The same as a question, of a site the actor sees. */
    public boolean mayChange(Actor actor, long siteId) {
        if (!actor.is(Role.INSTRUCTOR)) {
            return actor.is(Role.REGISTRAR);
        }
        var reached = people.reachable(actor);
        if (reached == null || isEnteredBy(actor, sites.find(siteId))) {
            return true;
        }
        var keepers = trees.keepersAt(siteId);
        long theirs = keepers.stream().filter(reached::contains).count();
        return keepers.isEmpty() || 2 * theirs > keepers.size();
    }

    private boolean includes(Actor actor, long siteId) {
        var keepers = people.reachable(actor);
        return keepers == null || includes(actor, siteId, keepers);
    }

    private boolean includes(Actor actor, long siteId, Collection<Long> keepers) {
        var site = sites.find(siteId);
        return (site != null && (site.site().schoolGround() || isEnteredBy(actor, site)))
                || trees.count("siteId = ?1 and keeperId in ?2", siteId, keepers) > 0
                || (actor.is(Role.INSTRUCTOR) && trees.count("siteId", siteId) == 0);
    }

    private static boolean isEnteredBy(Actor actor, @Nullable SiteEntered site) {
        return site != null && Objects.equals(site.enteredById(), actor.personId());
    }

    public List<SiteLine> lines(Actor actor) {
        var keepers = people.reachable(actor);
        var all = sites.byName();
        if (keepers == null) {
            return all.stream().map(site -> line(site, true)).toList();
        }
        var reached = trees.sitesOf(keepers);
        var taken = actor.is(Role.INSTRUCTOR) ? trees.sitesTaken() : Set.<Long>of();
        return all.stream()
                .map(
                        site ->
                                line(
                                        site,
                                        site.site().schoolGround()
                                                || isEnteredBy(actor, site)
                                                || reached.contains(site.site().id())
                                                || (actor.is(Role.INSTRUCTOR)
                                                        && !taken.contains(site.site().id()))))
                .toList();
    }

    private static SiteLine line(SiteEntered entered, boolean seen) {
        var site = entered.site();
        return new SiteLine(site.id(), site.name(), seen ? site : null);
    }
}
