package org.ripewood.api.kit;

import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.security.SecurityScheme;

/** How one signs in to the API, as its description tells it. */
final class Security {

    private static final String TOKEN = "token";
    private static final String SESSION = "session";

    private Security() {}

    static void describe(OpenAPI api) {
        api.getComponents()
                .addSecurityScheme(
                        TOKEN,
                        OASFactory.createSecurityScheme()
                                .type(SecurityScheme.Type.HTTP)
                                .scheme("bearer")
                                .description(
                                        "A token made on the account page, for reading or for"
                                                + " reading and writing; it does no more than its"
                                                + " owner may"))
                .addSecurityScheme(
                        SESSION,
                        OASFactory.createSecurityScheme()
                                .type(SecurityScheme.Type.APIKEY)
                                .in(SecurityScheme.In.COOKIE)
                                .name("ripewood-session")
                                .description("The session of a browser"));
        api.setSecurity(
                List.of(
                        OASFactory.createSecurityRequirement().addScheme(TOKEN),
                        OASFactory.createSecurityRequirement().addScheme(SESSION)));
    }
}
