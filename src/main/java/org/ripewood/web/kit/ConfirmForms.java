package org.ripewood.web.kit;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.Confirmation;
import org.ripewood.signin.Confirmations;

/**
 * Acts on a form once its sender has shown that it is them. Asked for that, they find what they
 * sent kept in the page that asks, so that it goes on with their password.
 */
@ApplicationScoped
public class ConfirmForms {

    private static final int FORBIDDEN = 403;

    /** The page's own fields, with what they are of a confirmation. */
    private static final Map<String, String> FIELDS =
            Map.of("confirmPassword", "password", "confirmCode", "code");

    /** A field as it was sent, to be sent again. */
    record Kept(String name, String value) {}

    /**
     * @param action where the form goes on to
     * @param code whether a code is asked for as well
     */
    record Sheet(String action, List<Kept> kept, boolean code, FormState typed) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance confirm(Sheet sheet);
    }

    private final Confirmations confirmations;
    private final Inputs inputs;
    private final CurrentVertxRequest request;
    private final String tokenField;

    ConfirmForms(
            Confirmations confirmations,
            Inputs inputs,
            CurrentVertxRequest request,
            @ConfigProperty(name = "quarkus.rest-csrf.form-field-name", defaultValue = "csrf-token")
                    String tokenField) {
        this.confirmations = confirmations;
        this.inputs = inputs;
        this.request = request;
        this.tokenField = tokenField;
    }

    /** Acts, or asks for the password first. */
    public Response first(MultivaluedMap<String, String> form, Supplier<Response> act) {
        var given = taken(form);
        if (confirmations.isConfirmed()) {
            return act.get();
        }
        if (given.isEmpty()) {
            return ask(FORBIDDEN, form, null);
        }
        try {
            confirmations.confirm(inputs.read(given, Confirmation.class));
        } catch (Refused refused) {
            return ask(refused.problem().status(), form, refused.problem());
        }
        return act.get();
    }

    /** Takes the page's own fields out of a form: they are shown nowhere again. */
    private static MultivaluedMap<String, String> taken(MultivaluedMap<String, String> form) {
        var taken = new MultivaluedHashMap<String, String>();
        FIELDS.forEach(
                (field, part) -> {
                    var values = form.remove(field);
                    if (values != null) {
                        taken.put(part, values);
                    }
                });
        return taken;
    }

    /** What was wrong, told of the page's fields. */
    private static Problem ofPage(Problem problem) {
        var faults =
                problem.faults().stream()
                        .map(fault -> new Fault(fieldOf(fault.field()), fault.message()))
                        .toList();
        return new Problem(
                problem.status(),
                problem.kind(),
                problem.title(),
                problem.detail(),
                problem.maybe(),
                faults);
    }

    private static String fieldOf(String part) {
        return FIELDS.entrySet().stream()
                .filter(field -> field.getValue().equals(part))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(part);
    }

    private Response ask(
            int status, MultivaluedMap<String, String> form, @Nullable Problem problem) {
        var typed = FormState.fresh("confirm");
        var told =
                problem == null
                        ? typed
                        : FormState.refused("confirm", new MultivaluedHashMap<>(), ofPage(problem));
        var kept =
                form.entrySet().stream()
                        .filter(field -> !field.getKey().equals(tokenField))
                        .flatMap(
                                field ->
                                        field.getValue().stream()
                                                .map(value -> new Kept(field.getKey(), value)))
                        .toList();
        var action = AskedAddress.of(request.getCurrent());
        return Answer.page(
                status,
                Templates.confirm(new Sheet(action, kept, confirmations.asksForCode(), told)));
    }
}
