package org.ripewood.platform.guards;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.LastAnswer;
import org.ripewood.platform.problems.Refused;

/** Counts a body that announced no length as it comes, and ends it where there is too much. */
class CountedBodies {

    private static final String MOST = "ripewood.body.most";

    /** The framework's own count ends a request without a word. */
    private static final String ITS_OWN = "io.quarkus.max-request-size";

    /** Has the body counted wherever it is read. */
    static void count(RoutingContext context, long most) {
        context.put(MOST, most);
    }

    @ServerRequestFilter(preMatching = true)
    void count(ContainerRequestContext request, RoutingContext context) {
        @Nullable Long most = context.get(MOST);
        if (most != null) {
            context.remove(ITS_OWN);
            request.setEntityStream(new Counted(request.getEntityStream(), most, context));
        }
    }

    private static final class Counted extends FilterInputStream {

        private final long most;
        private final RoutingContext context;
        private long read;

        Counted(InputStream body, long most, RoutingContext context) {
            super(body);
            this.most = most;
            this.context = context;
        }

        @Override
        public int read() throws IOException {
            var one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int got = super.read(into, from, length);
            read += Math.max(0, got);
            if (read > most) {
                LastAnswer.on(context);
                throw new Refused(BodyMost.tooLarge(most));
            }
            return got;
        }

        @Override
        public long skip(long bytes) throws IOException {
            var rest = new byte[(int) Math.min(bytes, 8_192)];
            return bytes <= 0 ? 0 : Math.max(0, read(rest, 0, rest.length));
        }

        /** The rest counts as well; the stream beneath would wait for however much there is. */
        @Override
        public void close() throws IOException {
            var rest = new byte[8_192];
            try {
                int more;
                do {
                    more = read(rest, 0, rest.length);
                } while (more >= 0 && read <= most);
            } catch (Refused tooMuch) {
                // why it is closed is answered
                return;
            }
            if (read <= most) {
                super.close();
            }
        }
    }
}
