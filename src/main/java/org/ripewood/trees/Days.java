package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Which days a record may speak of. */
@ApplicationScoped
public class Days {

    /** Older than any record a school has; an earlier day is a slip of the pen. */
    static final LocalDate FIRST = LocalDate.of(1900, 1, 1);

    /** When the last of a tree's keepings began. */
    static final String KEPT_SINCE = "when the keeper of now began";

    /** How far ahead a tree's state may be asked for: beyond any route. */
    private static final int AHEAD_YEARS = 50;

    private final Today today;
    private final TreeDays treeDays;

    Days(Today today, TreeDays treeDays) {
        this.today = today;
        this.treeDays = treeDays;
    }

    /**
     * Something seen or done of a tree lies neither in the future, by the server or at its site,
     * nor before anybody wrote it down.
     */
    public void requireHappened(String field, LocalDate day, long treeId) {
        requireBetween(field, day, treeDays.last(treeId));
    }

    /** The same at a site, of a tree that is only being entered there. */
    void requireHappenedAt(String field, LocalDate day, long siteId) {
        requireBetween(field, day, treeDays.lastAtSite(siteId));
    }

    /** The day it is at a tree's site: what is done there now is done on that day. */
    public LocalDate at(long treeId) {
        return treeDays.at(treeId);
    }

    /**
     * Some things follow on others.
     *
     * @param when the first day that fits is, such as "when the tree left"
     */
    void requireFrom(LocalDate first, String when, String field, LocalDate day) {
        if (day.isBefore(first)) {
            throw Refused.invalid(
                    field, "expected %s, %s, or later, found %s".formatted(first, when, day));
        }
    }

    /** A day to ask about may lie ahead, within what dates and databases can tell. */
    public void requireAskable(String field, LocalDate day) {
        requireBetween(field, day, today.date().plusYears(AHEAD_YEARS));
    }

    private static void requireBetween(String field, LocalDate day, LocalDate last) {
        if (day.isBefore(FIRST) || day.isAfter(last)) {
            throw Refused.invalid(
                    field, "expected a day from %s to %s, found %s".formatted(FIRST, last, day));
        }
    }
}
