package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.http.SecretAddress;
import org.ripewood.platform.problems.Problem;

/**
 * Refuses an address that is another spelling of one, before any guard or door sees it: a guard
 * that reads it otherwise than routing does could be walked round.
 */
@ApplicationScoped
public class OneSpelling {

    /** After the safety headers only. */
    private static final int FIRST = 9_900;

    private final ProblemAnswers answers;

    OneSpelling(ProblemAnswers answers) {
        this.answers = answers;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, FIRST);
    }

    private void filter(RoutingContext context) {
        if (AskedAddress.isPlain(context)) {
            context.next();
        } else {
            answers.refuse(context, problem(AskedAddress.of(context)));
        }
    }

    private static Problem problem(String plain) {
        return new Problem(
                400,
                "address",
                "One address, one spelling",
                "The address is not written plainly: it has something encoded that need not be, a"
                        + " double slash, a step by dots, a semicolon, a slash or a control"
                        + " character in disguise, or is no text.",
                maybe(plain),
                List.of());
    }

    private static @Nullable String maybe(String plain) {
        return AskedAddress.isPlain(plain) && !SecretAddress.is(plain)
                ? "Maybe " + plain + " was meant."
                : null;
    }
}
