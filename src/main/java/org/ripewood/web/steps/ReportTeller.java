package org.ripewood.web.steps;

/** The sentence that says that a step was reported, and what that frees: nothing yet. */
final class ReportTeller {

    private ReportTeller() {}

    /**
     * @param photos how many came with the report
     * @param teaches whether an instructor reported it
     */
    static String reported(String title, int photos, boolean teaches) {
        return "Reported “%s”%s. %s Steps that wait for it open once it is signed off."
                .formatted(
                        title,
                        photos == 0
                                ? ""
                                : photos == 1
                                        ? " with a photo"
                                        : " with %d photos".formatted(photos),
                        teaches ? "It waits for a sign-off." : "Your instructor looks at it.");
    }
}
