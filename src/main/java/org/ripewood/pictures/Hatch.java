package org.ripewood.pictures;

/** Grounds that differ without colour. Each is drawn on a tile of 6 × 6 px. */
enum Hatch {
    RISING("M-1 7L7 -1M-1 1L1 -1M5 7L7 5"),
    FALLING("M-1 -1L7 7M5 -1L7 1M-1 5L1 7"),
    CROSSED("M0 0L6 6M6 0L0 6"),
    LEVEL("M0 1.5H6M0 4.5H6"),
    UPRIGHT("M1.5 0V6M4.5 0V6"),
    DOTTED("M1 1.5h1.2M4 4.5h1.2");

    static final int TILE_PX = 6;

    private final String path;

    Hatch(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
