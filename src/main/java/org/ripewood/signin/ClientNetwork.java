package org.ripewood.signin;

import io.quarkus.runtime.StartupEvent;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/**
 * Where a request comes from, as wide as one household or school is told one. Behind a proxy that
 * is what the proxy itself wrote down: most append it to the header that came with the request, so
 * it is counted from the right. What stands before it anybody may have written.
 */
@ApplicationScoped
public class ClientNetwork {

    private static final String HEADER = "X-Forwarded-For";

    /** A household has a /64 of IPv6 at least (RFC 6177, 1; from memory). */
    private static final int BYTES_OF_IPV6 = 8;

    private static final int MOST_PROXIES = 10;

    /** Also with a port; a name is none and not looked up. */
    private static final Pattern ADDRESS =
            Pattern.compile(
                    "(?<four>[0-9.]{7,15})(:[0-9]+)?|\\[(?<bracketed>[0-9A-Fa-f:.]+)](:[0-9]+)?"
                            + "|(?<six>[0-9A-Fa-f:.]*:[0-9A-Fa-f:.]*:[0-9A-Fa-f:.]*)");

    private final CurrentVertxRequest current;
    private final boolean behindProxy;
    private final int proxies;

    ClientNetwork(
            CurrentVertxRequest current,
            @ConfigProperty(name = "ripewood.https") boolean behindProxy,
            @ConfigProperty(name = "ripewood.proxies") int proxies) {
        this.current = current;
        this.behindProxy = behindProxy;
        this.proxies = proxies;
    }

    void check(@Observes StartupEvent start) {
        if (proxies < 1 || proxies > MOST_PROXIES) {
            throw new IllegalStateException(
                    "RIPEWOOD_PROXIES: expected 1 to %d, found %d. Maybe leave it out; one proxy is usual."
                            .formatted(MOST_PROXIES, proxies));
        }
    }

    /** Of the request that is being answered. */
    public String ofRequest() {
        return of(current.getCurrent());
    }

    String of(@Nullable RoutingContext context) {
        return context == null ? "" : of(sender(context.request()));
    }

    private String sender(HttpServerRequest request) {
        // not the request's own word on it, which the framework takes from the left
        var peer = request.connection().remoteAddress();
        var sender = peer == null || peer.hostAddress() == null ? "" : peer.hostAddress();
        if (!behindProxy) {
            return sender;
        }
        var told = told(request.headers().getAll(HEADER), proxies);
        return told == null ? sender : told;
    }

    /**
     * The address that the outermost of our proxies wrote down; null when there is none.
     *
     * @param headers each a list, as they came
     */
    static @Nullable String told(List<String> headers, int proxies) {
        var all = String.join(",", headers).split(",", -1);
        var matched = ADDRESS.matcher(all[Math.max(0, all.length - proxies)].strip());
        if (!matched.matches()) {
            return null;
        }
        return matched.group("four") != null
                ? matched.group("four")
                : matched.group("bracketed") != null
                        ? matched.group("bracketed")
                        : matched.group("six");
    }

    /**
     * @param address in digits; no name is looked up
     */
    static String of(String address) {
        try {
            var bytes = InetAddress.getByName(address.replaceFirst("%.*", "")).getAddress();
            return HexFormat.of()
                    .formatHex(Arrays.copyOf(bytes, Math.min(bytes.length, BYTES_OF_IPV6)));
        } catch (UnknownHostException e) {
            return address;
        }
    }
}
