package org.ripewood.pictures;

import org.jspecify.annotations.Nullable;

/** What a drawing's values have to be. */
final class Checked {

    private Checked() {}

    /** Each is 0 mm or more, or not known. */
    static void lengths(String name, @Nullable Double... lengthsMm) {
        for (var mm : lengthsMm) {
            if (mm != null && !(mm >= 0 && mm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "a length on %s is 0 mm or more, found %s".formatted(name, mm));
            }
        }
    }

    static void bearing(String name, @Nullable Double degrees) {
        if (degrees != null && !(degrees >= -360 && degrees <= 360)) {
            throw new IllegalArgumentException(
                    "a bearing of %s lies between -360 and 360 degrees, found %s"
                            .formatted(name, degrees));
        }
    }
}
