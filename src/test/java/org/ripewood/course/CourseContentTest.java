package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ripewood.platform.Markdown;
import org.ripewood.platform.records.CodesInUse;
import org.ripewood.platform.records.TableDescription.CodeKind;

/** A school's own folder of content, edited while the service runs. */
@Tag("fast")
class CourseContentTest {

    private static final String PINE = "species/pinus_thunbergii.yaml";

    @TempDir Path folder;

    @BeforeEach
    void copyTheContentOfTheJar() throws IOException {
        for (var file : ContentFiles.inJar().bytesByPath().entrySet()) {
            var to = folder.resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.write(to, file.getValue());
        }
    }

    private List<CodesInUse.Use> inUse = List.of();

    private CourseContent start() {
        return new CourseContent(() -> Optional.of(folder), new Markdown(), () -> inUse);
    }

    private void edit(String file, String old, String with) throws IOException {
        var path = folder.resolve(file);
        Files.writeString(path, Files.readString(path).replace(old, with));
    }

    @Test
    void aFaultlessEditComesInForceWithARevisionOfItsOwn() throws IOException {
        var course = start();
        var before = course.inForce();
        edit(PINE, "common: Japanese black pine", "common: Black pine");
        assertThat(course.inForce()).isSameAs(before);
        assertThat(course.renew()).isEmpty();
        assertThat(course.inForce().species("pinus_thunbergii").common()).isEqualTo("Black pine");
        assertThat(course.inForce().revision()).isNotEqualTo(before.revision());
        assertThat(before.species("pinus_thunbergii").common()).isEqualTo("Japanese black pine");
    }

    @Test
    void aFaultyEditNeverReplacesTheContentInForce() throws IOException {
        var course = start();
        var before = course.inForce();
        edit(PINE, "zoneMin: 5", "zoneMin: 50");
        edit("stages.yaml", "order: 5", "order: 4");
        assertThat(course.renew()).extracting(ContentFault::file).contains(PINE, "stages.yaml");
        assertThat(course.inForce()).isSameAs(before);
        edit(PINE, "zoneMin: 50", "zoneMin: 5");
        assertThat(course.renew()).isNotEmpty();
        assertThat(course.inForce()).isSameAs(before);
    }

    @Test
    void aFolderThatIsGoneLeavesTheContentInForce() throws IOException {
        var course = start();
        var before = course.inForce();
        Files.move(folder, folder.resolveSibling(folder.getFileName() + "-away"));
        assertThat(course.renew())
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).contains("cannot be read"));
        assertThat(course.inForce()).isSameAs(before);
        Files.move(folder.resolveSibling(folder.getFileName() + "-away"), folder);
    }

    @Test
    void theServiceDoesNotStartOnFaultyContentAndTellsAllFaults() throws IOException {
        edit(PINE, "zoneMin: 5", "zoneMin: 50");
        edit("techniques/jin.yaml", "after: [front_marking]", "after: [front_making]");
        assertThatThrownBy(this::start)
                .isInstanceOf(CourseContent.FaultyContent.class)
                .hasMessageContaining(PINE + ":8: found 50; expected at most 13")
                .hasMessageContaining("found \"front_making\"; expected the code of a technique.")
                .hasMessageContaining("fault(s)");
    }

    @Test
    void whatRecordsNameCannotVanishByARenewal() throws IOException {
        var course = start();
        var before = course.inForce();
        inUse =
                List.of(
                        new CodesInUse.Use(CodeKind.SPECIES, "pinus_thunbergii", "tree", 3),
                        new CodesInUse.Use(CodeKind.TECHNIQUE, "jin", "step", 1),
                        new CodesInUse.Use(CodeKind.TECHNIQUE, "jinn", "workDone", 2),
                        new CodesInUse.Use(CodeKind.TECHNIQUE, "jinn", "step", 1));
        Files.delete(folder.resolve(PINE));
        assertThat(course.renew())
                .containsExactly(
                        new ContentFault(
                                PINE,
                                0,
                                "no species “pinus_thunbergii”, which 3 record(s) name (3 tree)",
                                "the file for as long as records name it."),
                        new ContentFault(
                                "techniques/jinn.yaml",
                                0,
                                "no technique “jinn”, which 3 record(s) name (1 step, 2 workDone)",
                                "the file for as long as records name it. Maybe “jin”."));
        assertThat(course.inForce()).isSameAs(before);
        inUse = List.of();
        assertThat(course.renew()).isEmpty();
        assertThat(course.inForce().species()).doesNotContainKey("pinus_thunbergii");
    }

    @Test
    void aKindTheContentLacksIsSaidToBeOne() {
        var kind = start().inForce().kindOf("picea_unknown");
        assertThat(kind.code()).isEqualTo("picea_unknown");
        assertThat(kind.common()).isEqualTo("kind not in the content: picea_unknown");
    }

    @Test
    void aLessonIsHeldToWhatIsShownOfIt() throws IOException {
        var lesson = "lessons/wiring-branches.md";
        var course = start();
        var lines = Files.readAllLines(folder.resolve(lesson));
        int at = lines.indexOf("## How") + 2;
        lines.addAll(
                at,
                List.of(
                        "See [this](javascript:alert(1)) and [that](https://example.org/).",
                        "",
                        "<script>alert(1)</script>",
                        "",
                        "Thinner than <b>that</b>, < 5 mm, <https://example.org/>."));
        Files.write(folder.resolve(lesson), lines);
        assertThat(course.renew())
                .extracting(ContentFault::file, ContentFault::line, ContentFault::found)
                .containsExactly(
                        tuple(lesson, at + 1, "a link to \"javascript:alert(1)\""),
                        tuple(lesson, at + 3, "HTML, \"<script>alert(1)</script>\""),
                        tuple(lesson, at + 5, "HTML, \"</b>\""),
                        tuple(lesson, at + 5, "HTML, \"<b>\""));
    }

    @Test
    void aWindowAvoidedFromEndToEndIsAFault() throws IOException {
        var file = "techniques/jin.yaml";
        var course = start();
        var text = Files.readString(folder.resolve(file));
        var season = text.indexOf("\nseason:");
        var after = text.indexOf("\n", text.indexOf("\n  source:", season) + 1);
        var changed =
                text.substring(0, season)
                        + """

                        season:
                          windows:
                            - stages: ["91-03"]
                          avoid:
                            - stages: ["91-99"]
                              why: Not in one part of it.
                            - {groups: [deciduous], stages: ["00-09"], why: Not in the other.}
                          why: So that nothing is left of it for some.
                          source: "common practice, no source\""""
                        + text.substring(text.indexOf("\n", season + 1) < 0 ? season : after);
        Files.writeString(folder.resolve(file), changed);
        assertThat(course.renew())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.found())
                                    .startsWith(
                                            "stages that are all to be avoided, for crataegus_monogyna")
                                    .doesNotContain("pinus");
                            assertThat(fault.line())
                                    .isEqualTo(
                                            changed.substring(0, changed.indexOf("- stages:"))
                                                    .split("\n", -1)
                                                    .length);
                        });
    }

    @Test
    void workThatCannotBeUndoneIsLookedAt() throws IOException {
        var course = start();
        var trunk = "techniques/trunk_chop.yaml";
        var text = Files.readString(folder.resolve(trunk));
        Files.writeString(
                folder.resolve(trunk), text.replaceAll("instructor: [0-9]+", "instructor: 0"));
        assertThat(course.renew())
                .extracting(ContentFault::found)
                .containsExactly("no minute of an instructor for work that cannot be undone");
    }

    @Test
    void contentCannotBeChangedByItsReaders() {
        var content = start().inForce();
        assertThatThrownBy(() -> content.species().clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> content.techniques().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }
}
