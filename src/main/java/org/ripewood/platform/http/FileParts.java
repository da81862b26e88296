package org.ripewood.platform.http;

import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.ripewood.platform.problems.Refused;

/** The files of a form in parts, as they were sent. */
public final class FileParts {

    private FileParts() {}

    /**
     * Goes on unless a file was sent with another under the same name, which would be left out
     * without a word.
     *
     * @throws Refused 400 otherwise
     */
    public static void requireAtMostOne(String field) {
        var request = CurrentRequestManager.get();
        var form = request == null ? null : request.getFormData();
        var parts = form == null ? null : form.get(field);
        if (parts != null && parts.size() > 1) {
            throw Refused.invalid(field, "expected one file, found " + parts.size());
        }
    }
}
