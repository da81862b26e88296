package org.ripewood.core.supply;

import java.util.List;

/** What is said with every dose. */
final class Feeding {

    /** Rest after root work: common practice, no source. */
    static final List<String> CAUTIONS =
            List.of(
                    "The product's label decides. Where it asks for less, give less.",
                    "No feed for four to six weeks after root work, and none to a dry root ball.");

    private Feeding() {}

    static Refusal noNitrogen() {
        return Refusal.of(
                "percentN", "a product with nitrogen, more than 0 %", 0, "read its label again.");
    }
}
