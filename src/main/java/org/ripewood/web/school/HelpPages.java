package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Markdown;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.Answer;

/** How to learn and how to teach with the service: the project's own pages for either. */
@Path("/help")
@Authenticated
class HelpPages {

    /** A page, by the file it stands in. */
    enum Topic {
        LEARNING("Learning with it"),
        TEACHING("Teaching with it");

        private final String title;

        Topic(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }

        String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The one that is not this. */
        public String otherCode() {
            return other().code();
        }

        public String otherTitle() {
            return other().title;
        }

        private Topic other() {
            return this == LEARNING ? TEACHING : LEARNING;
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance help(Topic topic, RawString body);
    }

    private final CurrentUser user;
    private final Markdown markdown;

    HelpPages(CurrentUser user, Markdown markdown) {
        this.user = user;
        this.markdown = markdown;
    }

    /** What the reader's own part in the school is about. */
    @GET
    public Response help() {
        var actor = user.actor();
        var teaches = actor.is(Role.INSTRUCTOR) || actor.is(Role.REGISTRAR);
        return page(teaches ? Topic.TEACHING : Topic.LEARNING);
    }

    @GET
    @Path("{topic}")
    public Response help(String topic) {
        for (var known : Topic.values()) {
            if (known.code().equals(topic)) {
                return page(known);
            }
        }
        throw Refused.notFound("help page", topic);
    }

    private Response page(Topic topic) {
        return Answer.page(Templates.help(topic, new RawString(markdown.html(text(topic)))));
    }

    private static String text(Topic topic) {
        var file = "/help/" + topic.code() + ".md";
        try (var in = Objects.requireNonNull(HelpPages.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
