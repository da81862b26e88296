package org.ripewood.standing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.steps.Wording;

/**
 * Whether every reason against a step may be let pass, and is, with a reason.
 *
 * @param seasonWillBeOpen whether the step begins only when its season is open
 */
record WaiverCheck(TechniqueStanding standing, boolean seasonWillBeOpen) {

    private static final String SEASON = "season";

    /**
     * The waivers to keep, by key.
     *
     * @throws Refused 409 when a reason cannot be waived, 400 when a waiver is missing or belongs
     *     to nothing
     */
    Map<String, String> check(@Nullable Map<String, String> typed) {
        var given = new HashMap<String, String>();
        if (typed != null) {
            typed.forEach(
                    (key, why) -> {
                        if (why != null && !why.isBlank()) {
                            given.put(key, why.strip());
                        }
                    });
        }
        refuseUnwaivable();
        var faults = new ArrayList<Fault>();
        missing(given, faults);
        strangers(given, faults);
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        return given;
    }

    private void refuseUnwaivable() {
        var fixed = standing.against().stream().filter(reason -> !reason.waivable()).toList();
        if (fixed.isEmpty()) {
            return;
        }
        var sentences = fixed.stream().map(ReasonView::sentence).collect(Collectors.joining(" "));
        throw new Refused(
                new Problem(
                        409,
                        "conflict",
                        "Not possible as things stand",
                        "“%s” cannot be assigned; cannot be waived: %s"
                                .formatted(standing.title(), sentences),
                        null,
                        fixed.stream()
                                .map(reason -> new Fault(reason.key(), reason.sentence()))
                                .toList()));
    }

    private void missing(Map<String, String> given, List<Fault> faults) {
        for (var reason : standing.against()) {
            var passes = SEASON.equals(reason.key()) && seasonWillBeOpen;
            if (!passes && !given.containsKey(reason.key())) {
                faults.add(
                        new Fault(
                                "waivers." + reason.key(),
                                "Needs a reason to be let pass: "
                                        + reason.sentence()
                                        + orLater(reason)));
            }
        }
    }

    private String orLater(ReasonView reason) {
        var opensOn = standing.opensOn();
        return opensOn == null || !SEASON.equals(reason.key())
                ? ""
                : " Or begin on %s or later.".formatted(Wording.day(opensOn));
    }

    private void strangers(Map<String, String> given, List<Fault> faults) {
        var keys = standing.against().stream().map(ReasonView::key).toList();
        for (var key : given.keySet().stream().sorted().toList()) {
            if (!keys.contains(key)) {
                faults.add(
                        new Fault(
                                "waivers." + key,
                                "No reason against the step has this key; expected "
                                        + (keys.isEmpty() ? "none" : Wording.list(keys, "or"))
                                        + "."));
            }
        }
    }
}
