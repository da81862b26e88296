package org.ripewood.news;

import java.time.Instant;
import java.util.List;

/**
 * What others did since one's last visit.
 *
 * @param since when that was
 * @param lines the latest first, at most {@link News#MOST}
 * @param more how much besides; counted up to {@link News#COUNTED} in all
 */
public record NewsTold(Instant since, List<NewsLine> lines, int more) {

    public NewsTold {
        lines = List.copyOf(lines);
    }
}
