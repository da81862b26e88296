package org.ripewood.web.many;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.steps.NewSignOffs;

/**
 * Reports that are signed off together, as the form sends them.
 *
 * @param step those ticked, as {@code id@version}
 */
record SignOffForm(
        @Nullable @Size(max = 100) List<@NotNull @Size(max = 40) String> step,
        @Nullable @Size(max = 2000) String note) {

    private static final Pattern STEP = Pattern.compile("(\\d{1,18})@(\\d{1,18})");

    NewSignOffs wanted() {
        if (step == null) {
            throw Refused.invalid("step", "Choose at least one report.");
        }
        return new NewSignOffs(step.stream().map(SignOffForm::one).toList(), note);
    }

    private static NewSignOffs.OfStep one(String typed) {
        var found = STEP.matcher(typed);
        if (!found.matches()) {
            throw Refused.invalid(
                    "step", "expected the number of a step and its version, found " + typed);
        }
        return new NewSignOffs.OfStep(
                Long.parseLong(found.group(1)), Long.parseLong(found.group(2)));
    }
}
