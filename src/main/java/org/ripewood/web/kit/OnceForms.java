package org.ripewood.web.kit;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.once.IdempotencyKeys;
import org.ripewood.platform.problems.Problem;

/** Acts on a form once, though it be sent twice: a double tap, or a line that broke off. */
@ApplicationScoped
public class OnceForms {

    private static final int SEE_OTHER = 303;

    private final IdempotencyKeys once;
    private final CurrentUser user;
    private final String tokenField;

    OnceForms(
            IdempotencyKeys once,
            CurrentUser user,
            @ConfigProperty(name = "quarkus.rest-csrf.form-field-name", defaultValue = "csrf-token")
                    String tokenField) {
        this.once = once;
        this.user = user;
        this.tokenField = tokenField;
    }

    /** As {@link Answer#to}; a form without its key is acted on each time. */
    public Response to(
            MultivaluedMap<String, String> form,
            Supplier<String> act,
            Function<Problem, TemplateInstance> again) {
        return Answer.to(() -> path(form, act), again);
    }

    /** The path to go on to, from now or from the first time. */
    public String path(MultivaluedMap<String, String> form, Supplier<String> act) {
        var key = form.getFirst(OnceField.NAME);
        if (key == null || key.isBlank()) {
            return act.get();
        }
        var sent = new TreeMap<>(form);
        sent.remove(OnceField.NAME);
        sent.remove(tokenField);
        var answered =
                once.answer(
                        user.actor(),
                        key,
                        sent,
                        () -> new IdempotencyKeys.Answered(SEE_OTHER, act.get(), null, null));
        return Objects.requireNonNull(answered.location());
    }
}
