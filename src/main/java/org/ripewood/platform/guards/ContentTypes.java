package org.ripewood.platform.guards;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Found;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Problems;
import org.ripewood.platform.problems.Refused;

/** The media type that a request says its body is of (RFC 9110, 8.3.1). */
final class ContentTypes {

    private static final String TOKEN = "[A-Za-z0-9!#$%&'*+.^_`|~-]{1,100}";

    private static final Pattern TYPE = Pattern.compile("(" + TOKEN + "/" + TOKEN + ")");

    private static final Pattern PARAMETER =
            Pattern.compile(
                    "[ \\t]*;[ \\t]*(?:(?<name>"
                            + TOKEN
                            + ")=(?<sent>(?<value>"
                            + TOKEN
                            + ")"
                            + "|\"(?<quoted>[^\"\\\\\\p{Cntrl}]{0,200})\"))?");

    /** RFC 2046, 5.1.1, but for the blank, which no program uses. */
    private static final Pattern BOUNDARY = Pattern.compile("[A-Za-z0-9'()+_,./:=?-]{1,70}");

    private ContentTypes() {}

    /**
     * What is wrong with it; null when it may go on. A type means the same in capitals, but not to
     * everybody who reads it here, so it is written in small letters; one that says nothing where
     * nothing is sent is left out.
     */
    static @Nullable Problem settle(HttpServerRequest request) {
        var sent = request.headers().getAll(HttpHeaders.CONTENT_TYPE);
        if (sent.isEmpty()) {
            return null;
        }
        var type = sent.get(0).strip();
        if (sent.size() > 1) {
            return unsound("one media type, found " + sent.size());
        }
        if (type.isEmpty() && !carriesABody(request)) {
            request.headers().remove(HttpHeaders.CONTENT_TYPE);
            return null;
        }
        var whole = TYPE.matcher(type);
        if (!whole.lookingAt()) {
            return unsound("a media type such as application/json, found " + Found.text(type));
        }
        var essence = whole.group(1).toLowerCase(Locale.ROOT);
        return parameters(request, essence, type.substring(whole.end()));
    }

    private static @Nullable Problem parameters(
            HttpServerRequest request, String essence, String rest) {
        var parameter = PARAMETER.matcher(rest);
        var settled = new StringBuilder(essence);
        String boundary = null;
        int read = 0;
        while (read < rest.length()) {
            if (!parameter.find() || parameter.start() != read) {
                return unsound("parameters such as charset=UTF-8, found " + Found.text(rest));
            }
            read = parameter.end();
            if (parameter.group("name") == null) {
                continue;
            }
            var name = parameter.group("name").toLowerCase(Locale.ROOT);
            settled.append("; ").append(name).append('=').append(parameter.group("sent"));
            if (name.equals("charset") && !isRead(essence, value(parameter))) {
                return Problems.plain(415, "Maybe send it in UTF-8.");
            }
            boundary = name.equals("boundary") ? value(parameter) : boundary;
        }
        request.headers().set(HttpHeaders.CONTENT_TYPE, settled);
        boolean inParts = essence.equals("multipart/form-data");
        return inParts && (boundary == null || !BOUNDARY.matcher(boundary).matches())
                ? unsound("a boundary of the parts, of 1 to 70 letters or digits")
                : null;
    }

    private static String value(Matcher parameter) {
        var value = parameter.group("value");
        return value == null ? String.valueOf(parameter.group("quoted")) : value;
    }

    /** A list is read as UTF-8 whatever it is said to be, and other bytes would lose letters. */
    private static boolean isRead(String essence, String charset) {
        return isCharset(charset)
                && (!essence.equals("text/csv") || Charset.forName(charset).equals(UTF_8));
    }

    private static boolean isCharset(String name) {
        try {
            return Charset.isSupported(name);
        } catch (IllegalCharsetNameException noName) {
            return false;
        }
    }

    private static boolean carriesABody(HttpServerRequest request) {
        var length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
        return request.headers().contains(HttpHeaders.TRANSFER_ENCODING)
                || (length != null && !length.equals("0"));
    }

    private static Problem unsound(String expected) {
        return Refused.invalid(List.of(new Fault("Content-Type", "expected " + expected)))
                .problem();
    }
}
