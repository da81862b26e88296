package org.ripewood.platform.guards;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.problems.Problems;
import org.ripewood.platform.problems.Refused;

/**
 * Writes to pages are forms. What comes as another type, or as none, would pass by the check of the
 * form's token, which reads forms only.
 */
class PageWriteGuard {

    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");

    private static final List<MediaType> FORMS =
            List.of(MediaType.APPLICATION_FORM_URLENCODED_TYPE, MediaType.MULTIPART_FORM_DATA_TYPE);

    @ServerRequestFilter
    void check(ContainerRequestContext request, RoutingContext context) {
        if (!ProblemAnswers.isApi(AskedAddress.of(context))
                && !READS.contains(request.getMethod())
                && !isForm(request.getMediaType())) {
            throw new Refused(Problems.plain(415, "Maybe send it from the page's own form."));
        }
    }

    private static boolean isForm(@Nullable MediaType type) {
        return type != null
                && FORMS.stream()
                        .anyMatch(
                                form ->
                                        form.getType().equalsIgnoreCase(type.getType())
                                                && form.getSubtype()
                                                        .equalsIgnoreCase(type.getSubtype()));
    }
}
