package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures of lessons draw and do nothing else, and those a lesson names are there. */
@Tag("fast")
class LessonPicturesTest {

    private static final String LESSON = "lessons/hollow-cuts.md";
    private static final String NAMED = "(pictures/hollow-cut.svg)";

    @Test
    void thePicturesOfTheContentAreRead() {
        var content = new Editing().read().content();
        assertThat(content).isNotNull();
        assertThat(content.pictures())
                .containsKeys("hollow-cut.svg", "root-flare.svg", "wire-angle.svg");
        assertThat(content.picture("hollow-cut.svg").type().mediaType()).isEqualTo("image/svg+xml");
        assertThat(content.lesson("hollow-cuts").html()).contains("![In section:", NAMED);
    }

    @Test
    void aPictureThatIsNotThereIsToldWithFileAndLine() {
        var editing = new Editing().replace(LESSON, NAMED, "(pictures/hollow.svg)");
        assertThat(editing.faults())
                .extracting(ContentFault::file, ContentFault::line, ContentFault::found)
                .containsExactly(
                        tuple(
                                LESSON,
                                editing.lineOf(LESSON, "pictures/hollow.svg"),
                                "\"pictures/hollow.svg\""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(pictures/../hollow-cuts.md)",
                "(https://elsewhere.example/x.svg)",
                "(/lessons/pictures/hollow-cut.svg)",
                "(pictures/hollow-cut.svg \"title\")",
                "[hollow]"
            })
    void aPictureOfElsewhereIsRefused(String target) {
        assertThat(new Editing().replace(LESSON, NAMED, target).faults()).isNotEmpty();
    }

    @Test
    void aPictureNeedsWords() {
        var editing = new Editing().replace(LESSON, "![In section", "![](pictures/x.svg)[");
        assertThat(editing.faults())
                .extracting(ContentFault::found)
                .contains("a picture without words");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>",
                "<svg xmlns='http://www.w3.org/2000/svg'><a href='javascript:alert(1)'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><image href='//elsewhere.example'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><foreignObject/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><style>*{}</style></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><use href='#x'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><g style='x:y'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><rect fill='url(//elsewhere.example)'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg'><svg:script xmlns:svg='x'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:l='http://www.w3.org/1999/xlink'><g"
                        + " l:href='x'/></svg>",
                "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>"
                        + "<svg xmlns='http://www.w3.org/2000/svg'><text>&x;</text></svg>",
                "<?xml-stylesheet href='x'?><svg xmlns='http://www.w3.org/2000/svg'/>",
                "<html xmlns='http://www.w3.org/1999/xhtml'/>",
                "<svg/>",
                "<svg xmlns='http://www.w3.org/2000/svg'>",
                "GIF89a"
            })
    void aHostilePictureIsRefused(String svg) {
        var editing = new Editing();
        editing.write("lessons/pictures/x.svg", svg.getBytes(StandardCharsets.UTF_8));
        assertThat(editing.faults())
                .extracting(ContentFault::file)
                .containsExactly("lessons/pictures/x.svg");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x.html", "X.svg", "x..svg", "x.svg.md", "a/x.svg", "x y.png"})
    void aPictureHasAPlainName(String name) {
        var editing = new Editing();
        var svg = "<svg xmlns='http://www.w3.org/2000/svg'/>";
        editing.write("lessons/pictures/" + name, svg.getBytes(StandardCharsets.UTF_8));
        assertThat(editing.faults()).hasSize(1);
    }

    @Test
    void whatIsCalledAPngIsOne() {
        var editing = new Editing();
        editing.write("lessons/pictures/x.png", "<svg/>".getBytes(StandardCharsets.UTF_8));
        assertThat(editing.faults())
                .extracting(ContentFault::found)
                .containsExactly("bytes that are no PNG");
    }
}
