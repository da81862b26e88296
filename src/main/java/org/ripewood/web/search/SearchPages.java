package org.ripewood.web.search;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.problems.Refused;
import org.ripewood.search.Finder;
import org.ripewood.search.Found;
import org.ripewood.search.Hit;
import org.ripewood.search.Kind;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** Finds trees, people, courses and what is taught, from any page. */
@Path("/search")
@Authenticated
class SearchPages {

    /**
     * @param found null when it was not searched, or all of one kind is shown
     * @param kind whose hits are all shown; null for the best of every kind
     * @param all those hits; null without a kind
     */
    record SearchSheet(
            FormState typed, @Nullable Found found, @Nullable Kind kind, @Nullable Paged<Hit> all) {

        /** The words, ready to be put into an address. */
        public String query() {
            return typed.query(List.of("q"));
        }

        /** The address of the best of every kind. */
        public String allKinds() {
            var query = query();
            return query.isEmpty() ? "/search" : "/search?" + query.substring(1);
        }

        public String maybe() {
            var meant = found == null ? null : found.maybe();
            return meant == null
                    ? ""
                    : FormState.fresh("search").with("q", meant).query(List.of("q")).substring(1);
        }

        public boolean asked() {
            return !typed.value("q").isBlank() && !typed.refused();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance search(SearchSheet sheet);
    }

    private static final int ON_A_PAGE = 50;

    private final CurrentUser user;
    private final Finder finder;

    SearchPages(CurrentUser user, Finder finder) {
        this.user = user;
        this.finder = finder;
    }

    @GET
    public Response search(
            @QueryParam("q") @DefaultValue("") String q,
            @QueryParam("kind") @Nullable String kind,
            @QueryParam("page") @DefaultValue("0") int page,
            @Context UriInfo uri) {
        var typed = FormState.fresh("search").with("q", q);
        return Answer.orAgain(
                () -> Templates.search(sheet(typed, q, kind, page)),
                problem ->
                        Templates.search(
                                new SearchSheet(
                                        FormState.refused(
                                                "search", uri.getQueryParameters(), problem),
                                        null,
                                        null,
                                        null)));
    }

    private SearchSheet sheet(FormState typed, String q, @Nullable String word, int page) {
        if (word == null) {
            return new SearchSheet(typed, finder.find(user.actor(), q), null, null);
        }
        var kind = kind(word);
        var all = finder.all(user.actor(), q, kind, new PageRequest(page, ON_A_PAGE));
        return new SearchSheet(typed, null, kind, all);
    }

    private static Kind kind(String word) {
        for (var kind : Kind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(word)) {
                return kind;
            }
        }
        throw Refused.notFound("kind of thing", word);
    }
}
