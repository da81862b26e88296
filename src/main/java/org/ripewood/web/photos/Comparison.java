package org.ripewood.web.photos;

import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.Photo;
import org.ripewood.platform.problems.Refused;

/** Two photos of a tree side by side. */
record Comparison(Photo before, Photo after) {

    /**
     * The two asked for; where none is asked for, the first and the latest from the front.
     *
     * @param all of the tree, those taken last first
     * @return null when there are no two to show
     * @throws Refused 404 for one that is not among them
     */
    static @Nullable Comparison of(
            List<Photo> all, @Nullable Long beforeId, @Nullable Long afterId) {
        var front = all.stream().filter(Photo::fromFront).toList();
        var first = front.isEmpty() ? null : front.get(front.size() - 1);
        var latest = front.isEmpty() ? null : front.get(0);
        var before = beforeId == null ? first : among(all, beforeId);
        var after = afterId == null ? latest : among(all, afterId);
        return before == null || after == null || before.equals(after)
                ? null
                : new Comparison(before, after);
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
                : "%d %s lie between them.".formatted(days, days == 1 ? "day" : "days");
    }
}
