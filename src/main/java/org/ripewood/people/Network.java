package org.ripewood.people;

import io.vertx.ext.web.RoutingContext;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** Where a request comes from, as wide as one household or school is told one. */
final class Network {

    /** A household has a /64 of IPv6 at least (RFC 6177, 1; from memory). */
    private static final int BYTES_OF_IPV6 = 8;

    private Network() {}

    static String of(@Nullable RoutingContext context) {
        var remote = context == null ? null : context.request().remoteAddress();
        return remote == null || remote.hostAddress() == null ? "" : of(remote.hostAddress());
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
