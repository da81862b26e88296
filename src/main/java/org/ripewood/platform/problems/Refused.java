package org.ripewood.platform.problems;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Ends a request with a {@link Problem}; the transaction it is thrown in is rolled back. */
public final class Refused extends RuntimeException {

    private final transient Problem problem;

    public Refused(Problem problem) {
        super(problem.detail());
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }

    /** 400: fields that cannot be taken as they are. */
    public static Refused invalid(List<Fault> faults) {
        return new Refused(
                new Problem(
                        400,
                        "invalid",
                        "Something in the form needs another look",
                        faults.size() == 1
                                ? "One entry needs correcting."
                                : "%d entries need correcting.".formatted(faults.size()),
                        null,
                        faults));
    }

    /** 400: one field that cannot be taken as it is. */
    public static Refused invalid(String field, String message) {
        return invalid(List.of(new Fault(field, message)));
    }

    /** 403: known, but not allowed to do this. */
    public static Refused forbidden(String detail) {
        return new Refused(
                new Problem(403, "forbidden", "Not yours to do", detail, null, List.of()));
    }

    /** 404: not there, or out of this person's reach, which is told alike. */
    public static Refused notFound(String what, Object id) {
        return new Refused(
                new Problem(
                        404,
                        "not-found",
                        "Not found",
                        "There is no %s %s that you can see.".formatted(what, id),
                        null,
                        List.of()));
    }

    /** 409: the state of things does not allow it. */
    public static Refused conflict(String detail, @Nullable String maybe) {
        return new Refused(
                new Problem(
                        409, "conflict", "Not possible as things stand", detail, maybe, List.of()));
    }

    /** 412: someone changed it since it was read. */
    public static Refused stale(String what) {
        return new Refused(
                new Problem(
                        412,
                        "stale",
                        "Someone changed this",
                        "The %s was changed after you opened it; nothing was saved."
                                .formatted(what),
                        "Maybe open it again and compare with what you typed.",
                        List.of()));
    }
}
