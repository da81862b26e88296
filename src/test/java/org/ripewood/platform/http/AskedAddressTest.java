package org.ripewood.platform.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The one spelling of an address: RFC 3986, 6.2.2 normalised, and less than 3.3 allows. */
@Tag("fast")
class AskedAddressTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/trees/7",
                "/trees/7/",
                "/api/v1/people/9/record",
                "/calendar/Ab_-9.ics",
                "/lessons/pictures/a..b.svg",
                "/.well-known/x",
                "/...",
                "/a:b@c!d$e&f'g(h)i*j+k,l=m~",
                "/%C3%9Cbung%20a%3B%25",
                "/%e2%82%ac"
            })
    void plain(String path) {
        assertThat(AskedAddress.isPlain(path)).isTrue();
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(
            strings = {
                "",
                "*",
                "trees",
                "//",
                "//trees",
                "/trees//7",
                "/trees//",
                "/.",
                "/..",
                "/./trees",
                "/a/../trees",
                "/trees/..",
                "/trees;a=b",
                "/;/trees",
                "/%74rees",
                "/%7e",
                "/%2D",
                "/%2E%2e/trees",
                "/api%2fv1",
                "/api%2Fv1",
                "/api%5cv1",
                "/api\\v1",
                "/%00",
                "/%1f",
                "/%7f",
                "/%C2%85",
                "/%",
                "/%2",
                "/%zz",
                "/%c3",
                "/%c0%af",
                "/%ed%a0%80",
                "/a b",
                "/a\"b",
                "/<b>",
                "/a|b",
                "/a^b",
                "/{a}",
                "/[a]",
                "/a#b",
                "/Übung",
                "/\u0000"
            })
    void anotherSpellingOrNone(String path) {
        assertThat(AskedAddress.isPlain(path)).isFalse();
    }

    @Test
    void aLongOneIsReadAsWell() {
        assertThat(AskedAddress.isPlain("/" + "a%20".repeat(100_000))).isTrue();
        assertThat(AskedAddress.isPlain("/" + "a/".repeat(100_000) + "/")).isFalse();
    }
}
