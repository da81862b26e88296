package org.ripewood.web.kit;

import io.quarkus.qute.TemplateExtension;
import org.ripewood.platform.Paged;

/**
 * Where in a list a page lies, as people count. No method may be called as one of the record's own
 * without its "has": a template would take that one.
 */
@TemplateExtension
final class PagedFormat {

    private PagedFormat() {}

    static long from(Paged<?> paged) {
        return Math.min(paged.total(), (long) paged.page() * paged.size() + 1);
    }

    static long to(Paged<?> paged) {
        return Math.min(paged.total(), (long) paged.page() * paged.size() + paged.items().size());
    }

    static int nextPage(Paged<?> paged) {
        return paged.page() + 1;
    }

    static int previousPage(Paged<?> paged) {
        return paged.page() - 1;
    }
}
