package org.ripewood.trees;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A tree as somebody who reaches it may read it.
 *
 * @param formerKeepers everybody who kept it before
 * @param hidden those of them whom the reader does not reach: neither their names nor what they
 *     wrote in their own words is for the reader
 * @param earlier what was said of the tree before somebody said something else, the latest first
 */
public record ReachedTree(
        Tree tree, Set<Long> formerKeepers, Set<Long> hidden, List<EarlierWords> earlier) {

    public ReachedTree {
        formerKeepers = Set.copyOf(formerKeepers);
        hidden = Set.copyOf(hidden);
        earlier = List.copyOf(earlier);
    }

    /** Words of somebody on this tree's record; null where they are not for the reader. */
    public @Nullable String words(long byId, @Nullable String words) {
        return FormerKeepers.words(hidden, byId, words);
    }
}
