package org.ripewood;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import io.restassured.RestAssured;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.SocketException;
import java.time.Duration;
import java.util.regex.Pattern;

/** A connection to the service on which the bytes go that a test writes, and no others. */
public final class RawLine implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Pattern LENGTH = Pattern.compile("(?i)\r\ncontent-length: *(\\d+)\r\n");
    private static final String END_OF_HEAD = "\r\n\r\n";

    private final Socket socket;

    public RawLine() {
        try {
            socket = new Socket("localhost", RestAssured.port);
            socket.setSoTimeout((int) PATIENCE.toMillis());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is answered to a head of lines, each ended as HTTP/1.1 wants it, and a body. */
    public static String answer(String head, String body) {
        try (var line = new RawLine()) {
            return line.send(lines(head)).send(body.getBytes(ISO_8859_1)).answer();
        }
    }

    /** Lines ended by CR LF, and an empty one. */
    public static byte[] lines(String head) {
        return (head.strip().replace("\n", "\r\n") + END_OF_HEAD).getBytes(ISO_8859_1);
    }

    /** Sends it, or gives up when the other side has closed. */
    public RawLine send(byte[] bytes) {
        try {
            socket.getOutputStream().write(bytes);
            socket.getOutputStream().flush();
        } catch (SocketException closed) {
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** A piece of a body in pieces (RFC 9112, 7.1); an empty one ends it. */
    public RawLine chunk(byte[] bytes) {
        send((Integer.toHexString(bytes.length) + "\r\n").getBytes(ISO_8859_1));
        send(bytes);
        return send("\r\n".getBytes(ISO_8859_1));
    }

    /** Whether something has been answered by now. */
    public boolean hasAnswer() {
        try {
            return socket.getInputStream().available() > 0;
        } catch (IOException closed) {
            return true;
        }
    }

    /** One answer, head and body; of one that tells no length whatever comes until it ends. */
    public String answer() {
        var heard = new ByteArrayOutputStream();
        try {
            var head = "";
            for (int next = read(); next >= 0; next = read()) {
                heard.write(next);
                head = next == '\n' ? heard.toString(ISO_8859_1) : "";
                if (head.endsWith(END_OF_HEAD)) {
                    break;
                }
            }
            var length = LENGTH.matcher(head);
            var in = socket.getInputStream();
            heard.writeBytes(
                    length.find()
                            ? in.readNBytes(Integer.parseInt(length.group(1)))
                            : in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("after " + heard.toString(UTF_8), e);
        }
        return heard.toString(UTF_8);
    }

    private int read() throws IOException {
        return socket.getInputStream().read();
    }

    /** Whether the other side closes without another byte, within a time. */
    public boolean isClosedWithin(Duration time) {
        try {
            socket.setSoTimeout((int) time.toMillis());
            return read() < 0;
        } catch (SocketException reset) {
            return true;
        } catch (IOException stillOpen) {
            return false;
        }
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
