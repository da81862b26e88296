package org.ripewood.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A teacher tries a folder of content of their own. */
@Tag("fast")
class ContentTrialTest {

    private static final String WIRE = "techniques/wire_removal.yaml";
    private static final String CASES = "cases/my-trees.yaml";

    @TempDir Path folder;
    private final ByteArrayOutputStream told = new ByteArrayOutputStream();

    @BeforeEach
    void copyTheShippedContentWithOneTopicAlone() throws IOException {
        try (var files = Files.walk(ShippedContent.FOLDER)) {
            for (var file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                var name = ShippedContent.FOLDER.relativize(file);
                if (!name.startsWith("cases")) {
                    Files.createDirectories(folder.resolve(name).getParent());
                    Files.copy(file, folder.resolve(name));
                }
            }
        }
        Files.createDirectories(folder.resolve("cases"));
        Files.writeString(
                folder.resolve(CASES),
                """
                code: my-trees
                title: My trees
                about: What I would say of my own trees.
                cases:
                  - name: fig-wire
                    title: The wire on a fig leaves a faint mark in summer
                    species: ficus_retusa
                    climate: wet-tropics-6s
                    day: "07-10"
                    age: 3
                    known:
                      - {fact: wire_on, is: true}
                      - {fact: wire_mark_mm, is: 0.4}
                    technique: wire_removal
                    verdicts: [READY]
                    why: A mark to be felt is a mark to be seen next month.
                    source: common practice, no source
                """);
    }

    private int check(String... folders) {
        var asked = new ArrayList<>(List.of("--check-content"));
        asked.addAll(List.of(folders));
        return run(asked.toArray(String[]::new));
    }

    private int run(String... asked) {
        told.reset();
        return new ContentTrial(new PrintStream(told, true, StandardCharsets.UTF_8)).of(asked);
    }

    private String told() {
        return told.toString(StandardCharsets.UTF_8);
    }

    private void edit(String file, String old, String with) throws IOException {
        var text = Files.readString(folder.resolve(file));
        assertThat(text).contains(old);
        Files.writeString(folder.resolve(file), text.replace(old, with));
    }

    @Test
    void casesThatAgreeEndItWell() {
        assertThat(check(folder.toString())).as(told()).isEqualTo(ContentTrial.FINE);
        assertThat(told()).contains("no faults; 0 of 1 cases disagree");
    }

    @Test
    void anEditedThresholdShowsWhichJudgementChanges() throws IOException {
        edit(WIRE, "fact: wire_mark_mm, atLeast: 0.3", "fact: wire_mark_mm, atLeast: 0.5");
        assertThat(check(folder.toString())).isEqualTo(ContentTrial.WRONG);
        assertThat(told())
                .contains(CASES + ":5: my-trees/fig-wire: The wire on a fig")
                .contains("expected READY; found NOT_NEEDED")
                .contains("the teacher's reason: A mark to be felt")
                .contains("1 of 1 cases disagree");
    }

    @Test
    void faultsAreToldAndNothingIsPlayed() throws IOException {
        edit(CASES, "species: ficus_retusa", "species: ficus_retus");
        assertThat(check(folder.toString())).isEqualTo(ContentTrial.WRONG);
        assertThat(told())
                .contains(CASES + ":7: found \"ficus_retus\"; expected the code of a species.")
                .contains("1 fault(s): no case was played");
    }

    @Test
    void aFolderThatIsNotThereOrNotNamedIsTold() {
        assertThat(check(folder.resolve("nowhere").toString())).isEqualTo(ContentTrial.WRONG);
        assertThat(told()).contains("a folder that cannot be read");
        assertThat(check()).isEqualTo(ContentTrial.MISUSED);
        assertThat(check("one", " ")).isEqualTo(ContentTrial.MISUSED);
        assertThat(run("--check-added", "one", "two")).isEqualTo(ContentTrial.MISUSED);
        assertThat(check("one", "two", "three")).isEqualTo(ContentTrial.MISUSED);
        assertThat(told()).contains("Found 3 folders").contains("Maybe --check-content");
    }

    @Test
    void aFolderLaidOverIsPlayedWithTheOtherAndNamedWhereItIsWrong(@TempDir Path added)
            throws IOException {
        var wire = added.resolve(WIRE);
        Files.createDirectories(wire.getParent());
        var text = Files.readString(folder.resolve(WIRE));
        Files.writeString(wire, text);
        assertThat(check(folder.toString(), added.toString())).isEqualTo(ContentTrial.FINE);
        assertThat(told()).contains("1 file(s) of it laid over: no faults");
        Files.writeString(
                wire,
                text.replace(
                        "fact: wire_mark_mm, atLeast: 0.3", "fact: wire_mark_mm, atLeast: 0.5"));
        assertThat(check(folder.toString(), added.toString())).isEqualTo(ContentTrial.WRONG);
        assertThat(told()).contains(folder.resolve(CASES) + ":5: my-trees/fig-wire");
        Files.writeString(wire, text.replace("fact: wire_mark_mm", "fact: wire_mark_m"));
        assertThat(check(folder.toString(), added.toString())).isEqualTo(ContentTrial.WRONG);
        assertThat(told()).contains(wire + ":").contains("no case was played");
        assertThat(check(folder.toString())).isEqualTo(ContentTrial.FINE);
        assertThat(run("--check-added", added.toString())).isEqualTo(ContentTrial.WRONG);
        assertThat(told()).contains(wire + ":");
    }
}
