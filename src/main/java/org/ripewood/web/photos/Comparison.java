package org.ripewood.web.photos;

import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.Photo;
import org.ripewood.platform.problems.Refused;

/** Two photos of a tree side by side. */
record Comparison(Photo before, Photo after) {

    private static final double DAYS_OF_YEAR = 365.25;

    /** A season is a quarter of a year. */
    private static final double HALF_A_SEASON = DAYS_OF_YEAR / 8;

    /**
     * The two asked for. Where none is asked for, two from the front of the same season, the latest
     * and that of the first year; where there are none such, the first and the latest.
     *
     * @param all of the tree, those taken last first
     * @return null when there are no two to show
     * @throws Refused 404 for one that is not among them
     */
    static @Nullable Comparison of(
            List<Photo> all, @Nullable Long beforeId, @Nullable Long afterId) {
        var front = all.stream().filter(Photo::fromFront).toList();
        var asked = beforeId != null || afterId != null;
        var sameSeason = asked ? null : ofOneSeason(front);
        return sameSeason == null ? of(all, front, beforeId, afterId) : sameSeason;
    }

    private static @Nullable Comparison of(
            List<Photo> all, List<Photo> front, @Nullable Long beforeId, @Nullable Long afterId) {
        var first = front.isEmpty() ? null : front.get(front.size() - 1);
        var latest = front.isEmpty() ? null : front.get(0);
        var before = beforeId == null ? first : among(all, beforeId);
        var after = afterId == null ? latest : among(all, afterId);
        return before == null || after == null || before.equals(after)
                ? null
                : new Comparison(before, after);
    }

    /** The latest that has one of the same season in an earlier year, with the earliest such. */
    private static @Nullable Comparison ofOneSeason(List<Photo> latestFirst) {
        for (var after : latestFirst) {
            for (int i = latestFirst.size() - 1; i >= 0; i--) {
                var pair = new Comparison(latestFirst.get(i), after);
                if (pair.sameSeason()) {
                    return pair;
                }
            }
        }
        return null;
    }

    /** Whether years lie between them, and at most half a season besides. */
    public boolean sameSeason() {
        long days = ChronoUnit.DAYS.between(before.takenOn(), after.takenOn());
        long years = Math.round(days / DAYS_OF_YEAR);
        return years > 0 && Math.abs(days - years * DAYS_OF_YEAR) <= HALF_A_SEASON;
    }

    private static Photo among(List<Photo> all, long photoId) {
        return all.stream()
                .filter(photo -> photo.id() == photoId)
                .findFirst()
                .orElseThrow(() -> Refused.notFound("photo", photoId));
    }

    public List<Photo> both() {
        return List.of(before, after);
    }

    public String apart() {
        long days = Math.abs(ChronoUnit.DAYS.between(before.takenOn(), after.takenOn()));
        return days == 0
                ? "Both were taken on one day."
                : "%d %s lie between them%s."
                        .formatted(
                                days,
                                days == 1 ? "day" : "days",
                                sameSeason() ? "; the season is the same" : "");
    }
}
