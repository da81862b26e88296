package org.ripewood.api.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;

/**
 * Writes into the API's description what every operation may be refused with, so that none can be
 * forgotten. Problems have the members of RFC 9457 and two of ours: {@code maybe} and {@code
 * faults}.
 */
public class ProblemResponses implements OASFilter {

    private static final String PROBLEM = "Problem";
    private static final String FAULT = "Fault";

    @Override
    public void filterOpenAPI(OpenAPI api) {
        if (api.getComponents() == null) {
            api.setComponents(OASFactory.createComponents());
        }
        api.getComponents().addSchema(FAULT, fault()).addSchema(PROBLEM, problem());
        Security.describe(api);
        if (api.getPaths() != null && api.getPaths().getPathItems() != null) {
            api.getPaths().getPathItems().forEach(ProblemResponses::describe);
        }
    }

    private static void describe(String path, PathItem item) {
        item.getOperations().forEach((method, operation) -> describe(path, method, operation));
    }

    private static void describe(String path, PathItem.HttpMethod method, Operation operation) {
        if (method != PathItem.HttpMethod.GET) {
            operation.addParameter(writeHeader());
        }
        var responses = operation.getResponses();
        refusals(path, method, operation)
                .forEach(
                        (status, words) -> {
                            // what an operation says itself has content; the framework's has none
                            var said = responses.getAPIResponse(status);
                            if (said == null || said.getContent() == null) {
                                responses.addAPIResponse(status, refused(words));
                            }
                        });
    }

    private static Map<String, String> refusals(
            String path, PathItem.HttpMethod method, Operation operation) {
        var refusals = new TreeMap<String, String>();
        refusals.put("401", "Nobody is signed in");
        refusals.put("403", "Signed in, but not allowed to do this");
        if (path.contains("{")) {
            refusals.put("404", "Not there, or out of reach, which is told alike");
        }
        if (operation.getRequestBody() != null || has(operation, Parameter.In.QUERY)) {
            refusals.put("400", "Something cannot be taken as it is; faults name the fields");
        }
        if (method != PathItem.HttpMethod.GET) {
            refusals.put("409", "Not possible as things stand");
        }
        if (operation.getParameters() != null
                && operation.getParameters().stream()
                        .anyMatch(p -> "If-Match".equals(p.getName()))) {
            refusals.put("412", "Someone changed it since it was read");
            refusals.put("428", "The header If-Match is missing");
        }
        return refusals;
    }

    private static Parameter writeHeader() {
        return OASFactory.createParameter()
                .name("X-Ripewood")
                .in(Parameter.In.HEADER)
                .description("1; needed when the session cookie signs the request in")
                .schema(text("1"));
    }

    private static boolean has(Operation operation, Parameter.In place) {
        var parameters = operation.getParameters();
        return parameters != null && parameters.stream().anyMatch(p -> p.getIn() == place);
    }

    private static APIResponse refused(String words) {
        var body = OASFactory.createMediaType().schema(reference(PROBLEM));
        return OASFactory.createAPIResponse()
                .description(words)
                .content(OASFactory.createContent().addMediaType("application/problem+json", body));
    }

    private static Schema problem() {
        return object("Why something was refused (RFC 9457)")
                .addProperty("type", text("URI of the kind of problem"))
                .addProperty("title", text("the same for every problem of the kind"))
                .addProperty("status", of(Schema.SchemaType.INTEGER, "the HTTP status"))
                .addProperty("detail", text("what happened this time, with the values"))
                .addProperty("maybe", text("a guess at what was meant"))
                .addProperty(
                        "faults",
                        of(Schema.SchemaType.ARRAY, "field by field").items(reference(FAULT)));
    }

    private static Schema fault() {
        return object("One thing wrong with what was sent")
                .addProperty("field", text("as the sender wrote it; empty for the whole"))
                .addProperty("message", text("what was found and what was expected"));
    }

    private static Schema reference(String name) {
        return OASFactory.createSchema().ref(name);
    }

    private static Schema object(String words) {
        return of(Schema.SchemaType.OBJECT, words);
    }

    private static Schema text(String words) {
        return of(Schema.SchemaType.STRING, words);
    }

    private static Schema of(Schema.SchemaType type, String words) {
        return OASFactory.createSchema().type(new ArrayList<>(List.of(type))).description(words);
    }
}
