package org.ripewood.photos;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Refusals of what was sent as a photo. */
final class Unfit {

    /** The field every door takes the file in. */
    static final String FIELD = "photo";

    private Unfit() {}

    static Refused because(String message, @Nullable String maybe) {
        return new Refused(
                new Problem(
                        400,
                        "invalid",
                        "This cannot be kept as a photo",
                        "A photo has to be a JPEG or PNG picture.",
                        maybe,
                        List.of(new Fault(FIELD, message))));
    }

    static Refused broken(String found) {
        return because(
                "expected a whole picture, found " + found,
                "Maybe it was cut off on its way: open it on the phone, and send it once more.");
    }
}
