package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The address that is asked for. Routing decodes and shortens a path before it looks for a door, so
 * whoever guards a door must not look at another spelling of it: all take the path from here, and
 * OneSpelling refuses every other spelling before anything else.
 */
public final class AskedAddress {

    private static final String NOWHERE = "/";

    private static final String UNRESERVED =
            "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

    /** What else RFC 3986, 3.3 lets stand in a path, but for the semicolon of parameters. */
    private static final String RESERVED = "/!$&'()*+,=:@";

    private static final Pattern DOUBLE_SLASH_OR_DOTS = Pattern.compile("//|/\\.{1,2}(?:/|$)");

    private AskedAddress() {}

    /** The path as routing reads it. */
    public static String of(RoutingContext context) {
        try {
            return context.normalizedPath();
        } catch (IllegalArgumentException noPath) {
            return NOWHERE;
        }
    }

    /**
     * Whether a path is the only spelling of its address: nothing is encoded that need not be, no
     * step leads back or nowhere, and what is encoded is a text without slashes and control
     * characters.
     */
    public static boolean isPlain(RoutingContext context) {
        return isPlain(context.request().path());
    }

    public static boolean isPlain(@Nullable String sent) {
        return sent != null
                && sent.startsWith("/")
                && !DOUBLE_SLASH_OR_DOTS.matcher(sent).find()
                && isPlainlyEncoded(sent);
    }

    private static boolean isPlainlyEncoded(String sent) {
        var decoded = ByteBuffer.allocate(sent.length());
        for (int i = 0; i < sent.length(); i++) {
            int sign = sent.charAt(i);
            if (sign == '%') {
                sign = encoded(sent, i + 1);
                if (sign < 0 || sign == '/' || sign == '\\' || UNRESERVED.indexOf(sign) >= 0) {
                    return false;
                }
                i += 2;
            } else if (UNRESERVED.indexOf(sign) < 0 && RESERVED.indexOf(sign) < 0) {
                return false;
            }
            decoded.put((byte) sign);
        }
        try {
            var text = StandardCharsets.UTF_8.newDecoder().decode(decoded.flip());
            return text.chars().noneMatch(Character::isISOControl);
        } catch (CharacterCodingException noText) {
            return false;
        }
    }

    /** What two hexadecimal digits say; less than nothing when they are none. */
    private static int encoded(String sent, int at) {
        return at + 1 < sent.length()
                        && HexFormat.isHexDigit(sent.charAt(at))
                        && HexFormat.isHexDigit(sent.charAt(at + 1))
                ? HexFormat.fromHexDigits(sent, at, at + 2)
                : -1;
    }
}
