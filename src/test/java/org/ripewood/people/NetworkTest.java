package org.ripewood.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Addresses are those kept for documentation (RFC 5737 and RFC 3849). */
class NetworkTest {

    @Test
    void everyAddressOfIpv4IsANetwork() {
        assertThat(Network.of("192.0.2.7")).isNotEqualTo(Network.of("192.0.2.8"));
    }

    @Test
    void aHouseholdOfIpv6IsOneNetwork() {
        assertThat(Network.of("2001:db8:0:1::7")).isEqualTo(Network.of("2001:db8:0:1:ab::9%eth0"));
        assertThat(Network.of("2001:db8:0:1::7")).isNotEqualTo(Network.of("2001:db8:0:2::7"));
    }
}
