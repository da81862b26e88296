package org.ripewood.web.kit;

/** Shapes of states on an 18 by 18 field, so that no state is told by colour alone. */
enum Shape {
    DISC("M9 2a7 7 0 1 0 0 14a7 7 0 1 0 0-14z", true, "none"),
    HALF("M9 2a7 7 0 0 0 0 14zm0 0a7 7 0 0 1 0 14v-2a5 5 0 0 0 0-10z", true, "none"),
    BAR("M1 6h16v6h-16z", true, "none"),
    BROKEN("M9 2a7 7 0 1 0 0 14a7 7 0 1 0 0-14z", false, "3.6 2.68"),
    TRIANGLE("M9 2l8 14h-16z", true, "none"),
    CHECK("M2 10l5 5l9-11", false, "none"),
    DASH("M4 9h10", false, "none"),
    DIAMOND("M9 1l8 8l-8 8l-8-8z", true, "none"),
    TAG("M1 4h9l7 5l-7 5h-9z", true, "none"),
    BACK("M16 3v7h-12m4-4l-4 4l4 4", false, "none");

    final String path;
    final boolean filled;
    final String dashes;

    Shape(String path, boolean filled, String dashes) {
        this.path = path;
        this.filled = filled;
        this.dashes = dashes;
    }
}
