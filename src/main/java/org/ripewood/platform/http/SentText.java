package org.ripewood.platform.http;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/** Texts that come as files: what is not UTF-8 would be kept with its letters lost. */
public final class SentText {

    private SentText() {}

    /**
     * The text of a file; empty when nothing was sent.
     *
     * @param field that the fault is told of
     * @throws Refused 400 when it is not UTF-8
     */
    public static String utf8(String field, byte @Nullable [] sent) {
        if (sent == null) {
            return "";
        }
        var bytes = ByteBuffer.wrap(sent);
        try {
            // reports what it cannot read, where a String's constructor replaces it
            return StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
        } catch (CharacterCodingException e) {
            throw Refused.invalid(
                    field,
                    "expected a text in UTF-8, found line %d not UTF-8. Maybe save it as CSV UTF-8."
                            .formatted(line(sent, bytes.position())));
        }
    }

    private static int line(byte[] sent, int end) {
        int line = 1;
        for (int at = 0; at < end; at++) {
            line += sent[at] == '\n' ? 1 : 0;
        }
        return line;
    }
}
