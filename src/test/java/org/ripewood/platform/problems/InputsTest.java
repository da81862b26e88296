package org.ripewood.platform.problems;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jakarta.validation.Validation;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class InputsTest {

    enum Kind {
        ROUND,
        VERY_SHALLOW
    }

    record Entry(
            @NotBlank @Size(max = 10) String name,
            @NotNull LocalDate day,
            LocalTime at,
            @DecimalMin("1") @DecimalMax("500") Double widthMm,
            Long keeper,
            Integer count,
            Kind kind,
            boolean checked,
            @Pattern(regexp = "a|b", message = "one of a, b") String letter,
            @Size(min = 12) String password,
            @Size(max = 2) Map<@Size(max = 5) String, @Size(max = 8) String> waivers,
            @Size(min = 2, max = 2) List<@DecimalMax("60") Double> means,
            Set<Kind> kinds) {}

    private final Inputs inputs =
            new Inputs(
                    Validation.byDefaultProvider()
                            .configure()
                            .messageInterpolator(new ParameterMessageInterpolator())
                            .buildValidatorFactory()
                            .getValidator());

    @Test
    void everyKindOfFieldIsRead() {
        var entry = inputs.read(full(), Entry.class);

        assertThat(entry.name()).isEqualTo("Elm");
        assertThat(entry.day()).isEqualTo(LocalDate.of(2024, 2, 29));
        assertThat(entry.at()).isEqualTo(LocalTime.of(9, 30));
        assertThat(entry.widthMm()).isEqualTo(12.5);
        assertThat(entry.keeper()).isEqualTo(7L);
        assertThat(entry.count()).isEqualTo(3);
        assertThat(entry.kind()).isEqualTo(Kind.VERY_SHALLOW);
        assertThat(entry.checked()).isTrue();
        assertThat(entry.waivers()).isEqualTo(Map.of("vigou", "strong"));
        assertThat(entry.means()).containsExactly(1.0, -2.5);
        assertThat(entry.kinds()).containsExactlyInAnyOrder(Kind.ROUND, Kind.VERY_SHALLOW);
    }

    @Test
    void blankAndMissingFieldsAreLeftOut() {
        var form = form("name", "Elm", "day", "2024-02-29", "widthMm", "  ", "waivers.x", "");
        form.add("csrf-token", "anything");
        form.add("version", "3");

        var entry = inputs.read(form, Entry.class);

        assertThat(entry.widthMm()).isNull();
        assertThat(entry.checked()).isFalse();
        assertThat(entry.waivers()).isNull();
        assertThat(entry.means()).isNull();
        assertThat(entry.kinds()).isNull();
    }

    @ParameterizedTest(name = "{0}={1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "name     | ' '         | expected a value, found nothing",
                "name     | abcdefghijk | expected at most 10 characters, found 11",
                "day      | ''          | expected a value, found nothing",
                "day      | 2023-02-29  | expected a day such as 2024-03-31, found \"2023-02-29\"",
                "day      | 31.3.2024   | expected a day such as 2024-03-31, found \"31.3.2024\"",
                "day      | 1899-12-31 | expected a day from 1900-01-01 to 2199-12-31, found 1899-12-31",
                "day      | 2200-01-01 | expected a day from 1900-01-01 to 2199-12-31, found 2200-01-01",
                "at       | 25:00       | expected a time such as 09:30, found \"25:00\"",
                "widthMm  | 0.5         | expected at least 1, found 0.5",
                "widthMm  | 501         | expected at most 500, found 501",
                "widthMm  | 1,500       | expected a number such as 12.5, found \"1,500\". Maybe “1500” or “1.500”.",
                "widthMm  | 1,5,2       | expected a number such as 12.5, found \"1,5,2\"",
                "widthMm  | NaN         | expected a number such as 12.5, found \"NaN\"",
                "widthMm  | 0x1p3       | expected a number such as 12.5, found \"0x1p3\"",
                "widthMm  | 1e3         | expected a number such as 12.5, found \"1e3\"",
                "keeper   | 7.0         | expected a whole number, found \"7.0\"",
                "keeper   | 9223372036854775808 | expected a whole number, found"
                        + " \"9223372036854775808\"",
                "count    | many        | expected a whole number, found \"many\"",
                "kind     | square      | expected one of round, very_shallow, found \"square\"",
                "checked  | perhaps     | expected yes or no, found \"perhaps\"",
                "letter   | c           | expected one of a, b, found \"c\"",
                "password | tooshort    | expected at least 12 characters, found 8",
                "waivers.vigou | 123456789 | expected at most 8 characters, found 9",
                "means    | 1           | expected 2 entries, found 1",
                "kinds    | oval        | expected one of round, very_shallow, found \"oval\"",
            })
    void aFaultNamesTheFieldAndWhatWasExpected(String field, String sent, String message) {
        var form = full();
        form.putSingle(field, sent);

        var refused = catchThrowableOfType(Refused.class, () -> inputs.read(form, Entry.class));

        assertThat(refused.problem().faults()).containsExactly(new Fault(field, message));
        assertThat(refused.problem().status()).isEqualTo(400);
    }

    @Test
    void allFaultsAreToldAtOnce() {
        var form = full();
        form.putSingle("name", "");
        form.putSingle("day", "soon");
        form.putSingle("widthMm", "0");
        form.putSingle("keeper", "me");

        var refused = catchThrowableOfType(Refused.class, () -> inputs.read(form, Entry.class));

        assertThat(refused.problem().faults())
                .extracting(Fault::field)
                .containsExactlyInAnyOrder("name", "day", "widthMm", "keeper");
    }

    @Test
    void aPasswordKeepsItsBlanksAndIsNeverToldBack() {
        var form = full();
        form.putSingle("password", " twelve and more ");
        assertThat(inputs.read(form, Entry.class).password()).isEqualTo(" twelve and more ");

        form.putSingle("password", "twelve and \u0007 more");
        assertThatThrownBy(() -> inputs.read(form, Entry.class))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(refused.problem().faults())
                                        .singleElement()
                                        .satisfies(
                                                fault ->
                                                        assertThat(fault.message())
                                                                .doesNotContain("twelve")));
    }

    @Test
    void whatNoDatabaseKeepsIsRefused() {
        assertFaults(new Free("a\u0000b", 1.0), "text");
        assertFaults(new Free("half \ud83c", 1.0), "text");
        assertFaults(new Free("fine\n\ttext 🌳", Double.NaN), "number");
        assertFaults(new Free("fine", Double.POSITIVE_INFINITY), "number");
    }

    @Test
    void whatCouldOnlyMisleadIsRefused() {
        assertFaults(new Free("paid\u202eexe.trap", 1.0), "text");
        assertFaults(new Free("a\u200fb", 1.0), "text");
        assertFaults(new Free("<script>alert(1)</script>", 1.0), "text");
        assertFaults(new Free("<!-- -->", 1.0), "text");
        var fine = new Free("gap < 5 mm, 3<4, -> left & \"right\"", 1.0);
        assertThat(inputs.check(fine)).isEqualTo(fine);
        var password = new Secret("long<enough</secret>");
        assertThat(inputs.check(password)).isEqualTo(password);
    }

    @ParameterizedTest
    @ValueSource(ints = {0x7F, 0x80, 0x85, 0x9F, 0xFDD0, 0xFDEF, 0xFFFE, 0xFFFF, 0x1FFFE, 0x10FFFF})
    void whatIsNoCharacterIsRefused(int code) {
        assertFaults(new Free("Elm " + Character.toString(code), 1.0), "text");
    }

    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00A0, 0x00AD, 0x034F, 0x115F, 0x1160, 0x200B, 0x2060, 0x2800, 0x3164, 0xFE0F,
                0xFEFF, 0xFFA0
            })
    void whatNobodyCanSeeIsNoText(int code) {
        var unseen = Character.toString(code);
        assertFaults(new Free(unseen, 1.0), "text");
        assertFaults(new Free(" " + unseen + unseen + " ", 1.0), "text");
        var beside = new Free("Elm" + unseen + "3", 1.0);
        assertThat(inputs.check(beside)).isEqualTo(beside);
    }

    @ParameterizedTest
    @ValueSource(strings = {"two\nlines", "two\rlines", "two\u2028lines", "two\u2029lines"})
    void aNameHasOneLineAndANoteMayHaveMore(String lines) {
        var refused =
                catchThrowableOfType(
                        Refused.class, () -> inputs.check(new Labelled(lines, null, null)));
        assertThat(refused.problem().faults())
                .containsExactly(new Fault("label", "expected one line, found \"two·lines\""));
        var note = new Labelled("Elm", lines, lines);
        assertThat(inputs.check(note)).isEqualTo(note);
    }

    record Labelled(
            @Size(max = 120) String label,
            @Size(max = 2000) @Nullable String note,
            @Size(max = 128) @Nullable String password) {}

    record Free(String text, Double number) {}

    record Secret(String password) {}

    private void assertFaults(Free value, String field) {
        var refused = catchThrowableOfType(Refused.class, () -> inputs.check(value));
        assertThat(refused.problem().faults()).extracting(Fault::field).containsExactly(field);
    }

    @Test
    void aSoundValueIsHandedBack() {
        var value = new Free("fine", 1.0);
        assertThat(inputs.check(value)).isSameAs(value);
    }

    @Test
    void anEmptyBodyIsRefused() {
        assertThatThrownBy(() -> inputs.check(null)).isInstanceOf(Refused.class);
    }

    @Test
    void anElementOfAListIsNamedByItsPlace() {
        var form = full();
        form.put("means", List.of("1", "61"));

        var refused = catchThrowableOfType(Refused.class, () -> inputs.read(form, Entry.class));

        assertThat(refused.problem().faults())
                .containsExactly(new Fault("means[1]", "expected at most 60, found 61"));
    }

    private static MultivaluedHashMap<String, String> full() {
        var form =
                form(
                        "name",
                        "Elm",
                        "day",
                        "2024-02-29",
                        "at",
                        "09:30",
                        "widthMm",
                        "12.5",
                        "keeper",
                        "7",
                        "count",
                        "3",
                        "kind",
                        "very_shallow",
                        "checked",
                        "on",
                        "letter",
                        "a",
                        "password",
                        "long enough it is",
                        "waivers.vigou",
                        "strong");
        form.put("means", new ArrayList<>(List.of("1", "-2.5")));
        form.put("kinds", new ArrayList<>(List.of("round", "VERY_SHALLOW")));
        return form;
    }

    private static MultivaluedHashMap<String, String> form(String... pairs) {
        var form = new MultivaluedHashMap<String, String>();
        for (int i = 0; i < pairs.length; i += 2) {
            form.putSingle(pairs[i], pairs[i + 1]);
        }
        return form;
    }
}
