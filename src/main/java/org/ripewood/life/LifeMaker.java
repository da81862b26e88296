package org.ripewood.life;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.life.LifeEntry.Kind;
import org.ripewood.photos.Photos;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.routes.RouteMaker;
import org.ripewood.routes.RouteView;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TreeLook;

/**
 * Tells a tree's life. Read in a number of queries that does not depend on how long it is; told by
 * years, so that a long one is no long page. No transaction is held while the years ahead are gone
 * through.
 */
@ApplicationScoped
public class LifeMaker {

    /** Years told at once. */
    static final int YEARS = 10;

    /** So many entries are told at once, or fewer years; of one year alone no more than these. */
    static final int MOST = 200;

    /** Of what is ahead no more is told; the route tells all. */
    private static final int MOST_AHEAD = 8;

    private static final int FIRST_YEAR = 1900;

    private final Standings standings;
    private final Photos photos;
    private final RouteMaker routeMaker;

    LifeMaker(Standings standings, Photos photos, RouteMaker routeMaker) {
        this.standings = standings;
        this.photos = photos;
        this.routeMaker = routeMaker;
    }

    /**
     * The life of a tree within reach, told today; 404 otherwise.
     *
     * @param until the last year to tell of, 400 when it is not from 1900 to this one; null for the
     *     latest
     */
    public Life make(Actor actor, long treeId, @Nullable Integer until) {
        return of(standings.lookToday(actor, treeId), until);
    }

    /** The same of a tree that was just looked at today. */
    public Life of(TreeLook look, @Nullable Integer until) {
        int last = lastYear(until, look.on().getYear());
        var all = LifeEntries.of(look, photos.of(look.reached()));
        return told(look, all, last, look.tree().left() ? null : routeMaker.of(look.day(), null));
    }

    private static int lastYear(@Nullable Integer until, int now) {
        int last = until == null ? now : until;
        if (last < FIRST_YEAR || last > now) {
            throw Refused.invalid(
                    "until",
                    "Expected a year from %d to %d; found %d.".formatted(FIRST_YEAR, now, last));
        }
        return last;
    }

    private static Life told(
            TreeLook look, List<LifeEntry> all, int until, @Nullable RouteView route) {
        int first = from(all, until);
        var shown = all.stream().filter(entry -> isIn(entry, first, until)).toList();
        var older = all.stream().filter(entry -> entry.on().getYear() < first).toList();
        int now = look.on().getYear();
        return new Life(
                look.tree().id(),
                look.on(),
                older.isEmpty() && !shown.isEmpty() ? year(shown.get(shown.size() - 1)) : first,
                until,
                older.isEmpty() ? null : year(older.get(0)),
                until == now ? null : Math.min(now, until + YEARS),
                shown.stream().limit(MOST).toList(),
                Math.max(0, shown.size() - MOST),
                before(older),
                route == null ? List.of() : ahead(route),
                route == null ? null : new Life.Ahead(null, route.goalTitle(), route.reached()),
                Gained.in(now, all, look.day().content().stages()));
    }

    /** The earliest year that has room beside the last one; an empty year takes none. */
    private static int from(List<LifeEntry> all, int until) {
        int from = until;
        while (from > until - YEARS + 1 && count(all, from - 1, until) <= MOST) {
            from--;
        }
        return from;
    }

    private static long count(List<LifeEntry> all, int from, int until) {
        return all.stream().filter(entry -> isIn(entry, from, until)).count();
    }

    private static boolean isIn(LifeEntry entry, int from, int until) {
        return year(entry) >= from && year(entry) <= until;
    }

    private static int year(LifeEntry entry) {
        return entry.on().getYear();
    }

    /** Of all before: the last stage and container, and the last opening of each wound. */
    private static List<LifeEntry> before(List<LifeEntry> older) {
        var kept = new ArrayList<LifeEntry>();
        Set<String> told = new HashSet<>();
        for (var entry : older) {
            var what =
                    switch (entry.kind()) {
                        case STAGE, CONTAINER -> entry.kind().name();
                        case WOUND -> Kind.WOUND.name() + entry.id();
                        case ARRIVED, LEFT, STEP, WORK, TRUNK, PHOTO -> null;
                    };
            if (what != null && told.add(what) && !isClosed(entry)) {
                kept.add(entry);
            }
        }
        return kept;
    }

    private static boolean isClosed(LifeEntry entry) {
        return entry.kind() == Kind.WOUND && Objects.requireNonNullElse(entry.mm(), 0.0) == 0;
    }

    private static List<Life.Ahead> ahead(RouteView route) {
        return route.steps().stream()
                .filter(step -> !step.when().already())
                .limit(MOST_AHEAD)
                .map(step -> new Life.Ahead(step.technique(), step.title(), step.when()))
                .toList();
    }
}
