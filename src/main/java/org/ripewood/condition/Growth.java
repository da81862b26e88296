package org.ripewood.condition;

import java.util.List;

/**
 * What growing will bring about on a tree.
 *
 * @param closings of its wounds, the widest open first, deadwood by design last
 */
public record Growth(List<Closing> closings, Trunk trunk) {

    public Growth {
        closings = List.copyOf(closings);
    }
}
