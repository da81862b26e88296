package org.ripewood.web.kit;

import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import org.ripewood.accounts.PasswordLink;

/** A link to choose a password by, as the registrar is shown it this once. */
public record LinkFormat(String name, String address, Instant until) {

    public static LinkFormat of(PasswordLink link, UriInfo uri) {
        var address = uri.getBaseUriBuilder().path("password/" + link.secret()).build();
        return new LinkFormat(link.person().name(), address.toString(), link.expiresAt());
    }
}
