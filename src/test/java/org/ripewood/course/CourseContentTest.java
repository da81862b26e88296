package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
        return new CourseContent(
                new Set(Optional.of(folder), Optional.empty()), new Markdown(), () -> inUse);
    }

    private record Set(Optional<Path> folder, Optional<Path> added)
            implements CourseContent.Place {}

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
        // what teachers say of a species would be told as well
        try (var topics = Files.list(folder.resolve("cases"))) {
            for (var topic : topics.toList()) {
                Files.delete(topic);
            }
        }
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
    void contentCannotBeChangedByItsReaders() {
        var content = start().inForce();
        assertThatThrownBy(() -> content.species().clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> content.techniques().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }
}
