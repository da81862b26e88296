package org.ripewood.signin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Addresses are those kept for documentation (RFC 5737 and RFC 3849). */
@Tag("fast")
class PrecedenceGraphTest {

    @Test
    void everyAddressOfIpv4IsANetwork() {
        assertThat(ClientNetwork.of("192.0.2.7")).isNotEqualTo(ClientNetwork.of("192.0.2.8"));
    }

    @Test
    void aHouseholdOfIpv6IsOneNetwork() {
        assertThat(ClientNetwork.of("2001:db8:0:1::7"))
                .isEqualTo(ClientNetwork.of("2001:db8:0:1:ab::9%eth0"));
        assertThat(ClientNetwork.of("2001:db8:0:1::7"))
                .isNotEqualTo(ClientNetwork.of("2001:db8:0:2::7"));
    }

    @Test
    void whatTheProxyAppendedCountsAndNothingBeforeIt() {
        assertThat(ClientNetwork.told(List.of("203.0.113.9"), 1)).isEqualTo("203.0.113.9");
        assertThat(ClientNetwork.told(List.of("192.0.2.1, 203.0.113.9"), 1))
                .isEqualTo("203.0.113.9");
        assertThat(ClientNetwork.told(List.of("192.0.2.1", "x, 203.0.113.9"), 1))
                .isEqualTo("203.0.113.9");
    }

    @Test
    void ofTwoProxiesTheOuterKnowsWhoAsked() {
        var sent = List.of("192.0.2.1, 203.0.113.9, 198.51.100.4");
        assertThat(ClientNetwork.told(sent, 2)).isEqualTo("203.0.113.9");
        assertThat(ClientNetwork.told(List.of("198.51.100.4"), 2)).isEqualTo("198.51.100.4");
    }

    @ParameterizedTest
    @CsvSource({
        "203.0.113.9:51234, 203.0.113.9",
        "[2001:db8::7]:443, 2001:db8::7",
        "[2001:db8::7], 2001:db8::7",
        "2001:db8::7, 2001:db8::7",
    })
    void aPortIsNoPartOfIt(String told, String address) {
        assertThat(ClientNetwork.told(List.of(told), 1)).isEqualTo(address);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "unknown", "some.name.example", "203.0.113.9,", "localhost"})
    void whatIsNoAddressIsNone(String told) {
        assertThat(ClientNetwork.told(List.of(told), 1)).isNull();
    }
}
