package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.season.Outlook;

/** What people type never becomes part of the drawing. */
@Tag("fast")
class PictureSafetyTest {

    private static Picture named(String name) {
        return ClosurePicture.of(
                new ClosureDrawing(
                        name,
                        List.of(),
                        0,
                        List.of(),
                        5,
                        new Outlook.Unsaid("<b>" + name),
                        LocalDate.of(2026, 6, 20)),
                Sheet.PAGE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</title><script>alert(1)</script>",
                "\" onload=\"alert(1)",
                "a & b < c > d ' e",
                "]]><!--",
                "\u0000\u0001\u0008\ud800 \uffff half",
                "盆栽 🌲 \u202e"
            })
    void foreignTextStaysText(String name) {
        var picture = named(name);
        Svg.assertSound(picture);
        assertThat(Svg.all(picture, "script")).isEmpty();
        assertThat(Svg.all(picture, "b")).isEmpty();
    }

    @Test
    void textComesBackAsItWasTyped() {
        var name = "a & b < c > d ' e \"f\"";
        assertThat(Svg.all(named(name), "title").get(0).getTextContent())
                .isEqualTo("Closing of the wound: " + name);
    }

    @Test
    void aPictureForPaperKnowsNoCustomProperties() {
        var drawing = ClosurePictureTest.chop();
        assertThat(ClosurePicture.of(drawing, Sheet.PAPER).svg()).doesNotContain("var(");
        assertThat(ClosurePicture.of(drawing, Sheet.PAGE).svg()).contains("var(--moss, #3d5c2c)");
    }

    /** Two pictures on a page must not share the name of a pattern. */
    @Test
    void differentPicturesHaveDifferentNames() {
        assertThat(Svg.parsed(named("a")).getDocumentElement().getAttribute("aria-labelledby"))
                .isNotEqualTo(
                        Svg.parsed(named("b"))
                                .getDocumentElement()
                                .getAttribute("aria-labelledby"));
    }
}
