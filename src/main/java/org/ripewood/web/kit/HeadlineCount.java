package org.ripewood.web.kit;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.ripewood.boards.Board.Headline;

/** A headline and how many trees it leads. */
public record HeadlineCount(Headline headline, int trees) {

    /** Headlines that lead any tree, most urgent first. */
    public static List<HeadlineCount> of(Map<Headline, Integer> byHeadline) {
        return Arrays.stream(Headline.values())
                .map(headline -> new HeadlineCount(headline, byHeadline.getOrDefault(headline, 0)))
                .filter(count -> count.trees() > 0)
                .toList();
    }

    public Mark mark() {
        return Mark.of(headline);
    }
}
