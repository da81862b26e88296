package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.platform.Markdown;

/** A folder of the school's own, laid over the content the program travels with. */
@Tag("fast")
class AddedContentTest {

    private static final String PINE = "species/pinus_thunbergii.yaml";
    private static final String STEWARTIA = "species/stewartia_pseudocamellia.yaml";
    private static final String BENCHES = "lessons/our-benches.md";
    private static final String JIN = "techniques/jin.yaml";
    private static final Path DOCS = Path.of("src/site/markdown/content.md");

    @TempDir Path added;

    private record Set(Optional<Path> folder, Optional<Path> added)
            implements CourseContent.Place {}

    private CourseContent start() {
        return new CourseContent(
                new Set(Optional.empty(), Optional.of(added)), new Markdown(), List::of);
    }

    private static String shipped(String path) {
        var bytes = ContentFiles.inJar().bytesByPath().get(path);
        assertThat(bytes).as(path).isNotNull();
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The example of the documents: the indented lines behind the one that names the file. */
    private static String example(String path) throws IOException {
        return Files.readString(DOCS)
                .lines()
                .dropWhile(line -> !line.contains("`my-added/" + path + "`"))
                .skip(2)
                .takeWhile(line -> line.isEmpty() || line.startsWith("    "))
                .map(line -> line.isEmpty() ? line : line.substring(4))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private void write(String path, String text) throws IOException {
        var file = added.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    /**
     * What lies in the folder, and what the content then is.
     *
     * @param edit of the text that is laid over
     * @param holds of the content in force
     */
    record Laid(String path, Edit edit, String text, Predicate<Content> holds) {

        @Override
        public String toString() {
            return edit + " " + path;
        }
    }

    enum Edit {
        ADDED,
        REPLACED
    }

    static Stream<Laid> laid() throws IOException {
        return Stream.of(
                new Laid(
                        STEWARTIA,
                        Edit.ADDED,
                        example(STEWARTIA),
                        content ->
                                ofSchool(content, content.species().get("stewartia_pseudocamellia"))
                                        && content.species().size()
                                                == shippedContent().species().size() + 1),
                new Laid(
                        BENCHES,
                        Edit.ADDED,
                        example(BENCHES),
                        content -> hasOurBenches(content.lessons().get("our-benches"), content)),
                new Laid(
                        PINE,
                        Edit.REPLACED,
                        shipped(PINE)
                                .replace("common: Japanese black pine", "common: Our black pine"),
                        content ->
                                content.species("pinus_thunbergii")
                                                .common()
                                                .equals("Our black pine")
                                        && content.isOfSchool(content.species("pinus_thunbergii"))
                                        && content.species().size()
                                                == shippedContent().species().size()),
                new Laid(
                        JIN,
                        Edit.REPLACED,
                        shipped(JIN).replace("title: Make a jin", "title: Make our jin"),
                        content ->
                                content.titleOf("jin").equals("Make our jin")
                                        && content.isOfSchool(content.technique("jin"))),
                new Laid(
                        "glossary.yaml",
                        Edit.REPLACED,
                        "source: common practice, no source\nterms:\n  - word: bench\n    says: What a tree stands on here.\n",
                        content -> content.glossary().size() == 1));
    }

    private static Content shippedContent() {
        var content = CourseContent.check(null, null).content();
        assertThat(content).isNotNull();
        return content;
    }

    @ParameterizedTest
    @MethodSource("laid")
    void aFileIsAddedOrReplacesOneAndTheRestStays(Laid laid) throws IOException {
        assertThat(ContentFiles.inJar().bytesByPath().containsKey(laid.path()))
                .isEqualTo(laid.edit() == Edit.REPLACED);
        write(laid.path(), laid.text());
        var content = start().inForce();
        assertThat(laid.holds().test(content)).isTrue();
        assertThat(laid.holds().test(shippedContent())).isFalse();
        assertThat(content.ofSchool()).containsExactly(laid.path());
        assertThat(content.revision()).isNotEqualTo(shippedContent().revision());
        assertThat(content.techniques()).hasSameSizeAs(shippedContent().techniques());
        assertThat(content.isOfSchool(content.species("acer_palmatum"))).isFalse();
    }

    private static boolean ofSchool(Content content, @Nullable Species species) {
        return species != null && content.isOfSchool(species);
    }

    private static boolean hasOurBenches(@Nullable Lesson lesson, Content content) {
        return lesson != null
                && content.isOfSchool(lesson)
                && lesson.html().contains("number on your bench");
    }

    /** A folder that is wrong, what ends the start, and the place it names. */
    record Wrong(String path, String text, String told) {

        @Override
        public String toString() {
            return path + ": " + told;
        }
    }

    static Stream<Wrong> wrong() throws IOException {
        return Stream.of(
                new Wrong(
                        STEWARTIA,
                        example(STEWARTIA).replace("zoneMin: 5", "zoneMin: 50"),
                        "{added}/" + STEWARTIA + ":8: found 50; expected at most 13"),
                new Wrong(
                        PINE.replace("thunbergii", "thunbergi"),
                        shipped(PINE),
                        "{added}/species/pinus_thunbergi.yaml:1: found \"pinus_thunbergii\""),
                new Wrong("species/notes.txt", "Mine", "{added}/species/notes.txt:0: found a file"),
                new Wrong(
                        "species/large.yaml",
                        "x".repeat((int) ContentFiles.MOST_BYTES + 1),
                        "{added}/species/large.yaml:0: found 1000001 bytes"),
                new Wrong(
                        BENCHES,
                        example(BENCHES).replace("order: 31", "order: 10"),
                        "place 10 in establish, where "),
                new Wrong(
                        "works.yaml",
                        shipped("works.yaml").replace("code: wire", "code: wires"),
                        "the program's own techniques/wire_removal.yaml:"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void aFaultyFileEndsTheStartAndIsToldWithItsFolder(Wrong wrong) throws IOException {
        write(wrong.path(), wrong.text());
        assertThatThrownBy(this::start)
                .isInstanceOf(CourseContent.FaultyContent.class)
                .hasMessageContaining(wrong.told().replace("{added}", added.toString()));
    }

    @Test
    void aFolderThatIsNotThereOrIsAFileEndsTheStart() throws IOException {
        var missing = added.resolve("nowhere");
        assertThatThrownBy(() -> startOn(missing))
                .hasMessageContaining(missing + ":0: found a folder that cannot be read");
        var file = Files.writeString(added.resolve("a.yaml"), "code: a");
        assertThatThrownBy(() -> startOn(file))
                .hasMessageContaining(file + ":0: found a folder that cannot be read");
    }

    private static CourseContent startOn(Path added) {
        return new CourseContent(
                new Set(Optional.empty(), Optional.of(added)), new Markdown(), List::of);
    }

    @Test
    void aFolderWithNothingInItChangesNothing() {
        var content = start().inForce();
        assertThat(content.revision()).isEqualTo(shippedContent().revision());
        assertThat(content.ofSchool()).isEmpty();
    }

    @Test
    void readAgainItComesInForceAndAFaultLeavesWhatWas() throws IOException {
        var course = start();
        write(STEWARTIA, example(STEWARTIA));
        assertThat(course.renew()).isEmpty();
        var with = course.inForce();
        assertThat(with.species()).containsKey("stewartia_pseudocamellia");
        write(STEWARTIA, "code: [");
        assertThat(course.renew())
                .extracting(ContentFault::file)
                .contains(added.resolve(STEWARTIA).toString());
        assertThat(course.inForce()).isSameAs(with);
        write(STEWARTIA, example(STEWARTIA));
        // the same words as the program's, so the revision is the same and only the mark is new
        write(PINE, shipped(PINE));
        assertThat(course.renew()).isEmpty();
        assertThat(course.inForce().revision()).isEqualTo(with.revision());
        assertThat(course.inForce().ofSchool()).containsExactly(PINE, STEWARTIA);
    }
}
