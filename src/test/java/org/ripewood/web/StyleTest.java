package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The style sheet against WCAG 2.2 and against the house's own scales. */
@Tag("fast")
class StyleTest {

    private static String css = "";

    @BeforeAll
    static void readIt() throws IOException {
        try (var sheet = StyleTest.class.getResourceAsStream("/META-INF/resources/style.css")) {
            assertThat(sheet).isNotNull();
            css = new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** WCAG 2.2, success criterion 1.4.3: text of ordinary size needs 4.5 to 1. */
    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, sheet",
        "ink, shade",
        "soft, paper",
        "soft, sheet",
        "soft, shade",
        "moss, paper",
        "moss, sheet",
        "moss, moss-wash",
        "ochre, paper",
        "ochre, sheet",
        "ochre, ochre-wash",
        "slate, paper",
        "slate, sheet",
        "slate, slate-wash",
        "clay, paper",
        "clay, sheet",
        "clay, clay-wash",
        "ink, clay-wash",
        "ink, ochre-wash",
        "ink, moss-wash"
    })
    void textStandsOutFromItsGround(String text, String ground) {
        assertThat(contrast(colour(text), colour(ground))).isGreaterThanOrEqualTo(4.5);
        assertThat(contrast(dark(text), dark(ground))).as("dark").isGreaterThanOrEqualTo(4.5);
    }

    /** Words on a button, and on one that is pointed at. */
    @ParameterizedTest
    @CsvSource({"bright, moss", "bright, moss-deep", "bright, slate"})
    void wordsStandOutOnAButton(String text, String ground) {
        textStandsOutFromItsGround(text, ground);
    }

    /** WCAG 2.2, success criterion 1.4.11: the edge of a field needs 3 to 1. */
    @Test
    void theEdgeOfAFieldStandsOut() {
        assertThat(contrast(colour("edge"), colour("paper"))).isGreaterThanOrEqualTo(3);
        assertThat(contrast(colour("edge"), colour("sheet"))).isGreaterThanOrEqualTo(3);
        assertThat(contrast(dark("edge"), dark("paper"))).isGreaterThanOrEqualTo(3);
        assertThat(contrast(dark("edge"), dark("sheet"))).isGreaterThanOrEqualTo(3);
    }

    /** The formula's own extremes, as WCAG 2.2 states them. */
    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
    }

    @Test
    void thereAreFiveSizesOfType() {
        var sizes =
                Pattern.compile("font(?:-size)?:[^;}]*\\b(?:\\d*\\.)?\\d+(?:rem|px|em)\\b")
                        .matcher(css)
                        .results()
                        .map(found -> found.group())
                        .toList();
        assertThat(sizes).as("sizes said outside the scale").isEmpty();
        assertThat(css).contains("--small:", "--text:", "--lead:", "--head:", "--top:");
    }

    private static String colour(String name) {
        return colour(name, 0);
    }

    /** What the reader's dark setting makes of it. */
    private static String dark(String name) {
        var from = css.indexOf("prefers-color-scheme: dark");
        assertThat(from).isPositive();
        return colour(name, from);
    }

    private static String colour(String name, int from) {
        var found = Pattern.compile("--" + name + ": (#[0-9a-f]{6});").matcher(css);
        assertThat(found.find(from)).as("colour %s", name).isTrue();
        return found.group(1);
    }

    private static double contrast(String one, String other) {
        var a = luminance(one);
        var b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance as WCAG 2.2 defines it. */
    private static double luminance(String hex) {
        return 0.2126 * channel(hex, 1) + 0.7152 * channel(hex, 3) + 0.0722 * channel(hex, 5);
    }

    private static double channel(String hex, int from) {
        var value = Integer.parseInt(hex.substring(from, from + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
