package org.ripewood.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.platform.Role;

/** What a faulty file is told, and where. */
@Tag("fast")
class EntryTest {

    private static final LocalDate LOADING_DAY = LocalDate.of(2028, 3, 1);

    private final Faults faults = new Faults();
    private final Page page = new Page("trees/elm.yaml", LOADING_DAY, faults);

    static Stream<Arguments> faultyFiles() {
        return Stream.of(
                Arguments.of("missing key", "other: 1", 1, "name is missing"),
                Arguments.of("list for value", "name: [a, b]", 1, "name must be a single value"),
                Arguments.of("value for list", "name: a\nparts: 3", 2, "parts must be a list"),
                Arguments.of("no number", "name: a\nwide: 3mm", 2, "wide must be a number"),
                Arguments.of("decimal comma", "name: a\nwide: \"3,5\"", 2, "found \"3,5\""),
                Arguments.of("no such number", "name: a\nwide: .nan", 2, "wide must be a number"),
                Arguments.of("no day", "name: a\n\nday: soon", 3, "days from the day of loading"),
                Arguments.of("no flag", "name: a\nopen: maybe", 2, "open must be yes or no"),
                Arguments.of("no time", "name: a\nat: \"25:00\"", 2, "at must be a time"),
                Arguments.of("no word", "name: a\nrole: TEACHER", 2, "one of STUDENT, INSTRUCTOR"),
                Arguments.of("mistyped key", "name: a\nwid: 3", 2, "there is no wid here"),
                Arguments.of("with a guess", "name: a\nwid: 3", 2, "Maybe “wide”."),
                Arguments.of("written twice", "name: a\nname: b", 2, "name is written twice"),
                Arguments.of("inner fault", "name: a\nparts:\n  - {name: [x]}", 3, "single value"),
                Arguments.of("inner sort", "name: a\nparts:\n  - x", 3, "keys with values"),
                Arguments.of("a list on top", "- name: a", 1, "expected keys with values"),
                Arguments.of("no YAML", "name: a\nparts: [1,", 2, "not readable"),
                Arguments.of("tab", "name: a\n\twide: 3", 2, "not readable"),
                Arguments.of("empty", "", 0, "the file is empty"),
                Arguments.of(
                        "alias", "name: a\nparts: &p\n  - {name: b}\nday: *p", 0, "not readable"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faultyFiles")
    void aFaultIsToldWithItsLine(String kind, String text, int line, String message) {
        read(text);
        assertThatThrownBy(faults::throwIfAny)
                .isInstanceOfSatisfying(
                        FaultyFiles.class,
                        faulty ->
                                assertThat(faulty.faults())
                                        .as(kind)
                                        .anySatisfy(
                                                fault -> {
                                                    assertThat(fault.file())
                                                            .isEqualTo("trees/elm.yaml");
                                                    assertThat(fault.line()).isEqualTo(line);
                                                    assertThat(fault.message()).contains(message);
                                                }));
    }

    @Test
    void aFaultlessFileIsRead() {
        read(
                """
                name: Elm
                wide: -3.25
                day: -1
                open: yes
                at: "09:30"
                role: REGISTRAR
                parts:
                  - {name: left}
                """);
        faults.throwIfAny();
        assertThat(faults.count()).isZero();
    }

    @Test
    void oneFaultDoesNotHideTheNext() {
        read("wide: x\nday: y\nopen: z");
        // the three values and the missing name
        assertThat(faults.count()).isEqualTo(4);
    }

    private void read(String text) {
        var entry = page.open(text);
        if (entry == null) {
            return;
        }
        entry.text("name");
        entry.numberOrNull("wide");
        entry.dayOrNull("day");
        entry.flag("open");
        if (entry.textOrNull("at") != null) {
            entry.time("at");
        }
        if (entry.textOrNull("role") != null) {
            entry.word("role", Role.class);
        }
        for (var part : entry.entries("parts")) {
            part.text("name");
            part.close();
        }
        entry.close();
    }
}
