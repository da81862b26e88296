package org.ripewood.platform.http;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Found;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/**
 * Versions as entity tags, so that nobody overwrites what they have not seen (RFC 9110, 13.1.1).
 */
public final class Versions {

    /** A strong entity tag around a number; weak ones never match in If-Match. */
    private static final Pattern TAG = Pattern.compile("\"(\\d{1,18})\"");

    private Versions() {}

    /**
     * The version a writer has seen.
     *
     * @param ifMatch the If-Match header as sent
     * @throws Refused 428 when it is absent, 400 when it is no strong tag of one version
     */
    public static long required(@Nullable String ifMatch) {
        if (ifMatch == null || ifMatch.isBlank()) {
            throw new Refused(
                    new Problem(
                            428,
                            "version-needed",
                            "Say which version you have seen",
                            "A change needs the header If-Match with the version it is made to.",
                            "Maybe read it again and send back its ETag as it came.",
                            List.of()));
        }
        var tag = TAG.matcher(ifMatch.strip());
        if (!tag.matches()) {
            throw Refused.invalid(
                    "If-Match",
                    "expected one strong entity tag such as \"7\", found " + Found.text(ifMatch));
        }
        return Long.parseLong(tag.group(1));
    }

    /**
     * Whether a reader has that version already. Compared weakly, as reading may be (RFC 9110,
     * 13.1.2); a header that is no list of tags names none.
     *
     * @param ifNoneMatch the If-None-Match header as sent
     */
    public static boolean known(@Nullable String ifNoneMatch, long version) {
        return ifNoneMatch != null
                && Arrays.stream(ifNoneMatch.split(",", -1))
                        .map(tag -> tag.strip().replaceFirst("^W/", ""))
                        .anyMatch(tag -> tag.equals("*") || tag.equals(etag(version)));
    }

    /** The strong entity tag of a version. */
    public static String etag(long version) {
        return '"' + Long.toString(version) + '"';
    }
}
