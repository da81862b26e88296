package org.ripewood.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.platform.Role;

@Tag("fast")
class DemoSchoolTest {

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "::1", "127.8.9.1"})
    void theDemoListensOnLoopback(String host) {
        assertThatCode(() -> DemoSchool.requireLoopback(host)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "no-such-host.invalid"})
    void theDemoRefusesToListenAnywhereElse(String host) {
        assertThatThrownBy(() -> DemoSchool.requireLoopback(host))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("quarkus.http.host is \"" + host + "\"");
    }

    @ParameterizedTest
    @CsvSource({
        "false, /elsewhere, jdbc:h2:file:/elsewhere/ripewood;",
        "true, /elsewhere, jdbc:h2:file:/elsewhere/demo;",
        "true, , jdbc:h2:file:./data/demo;",
        "yes, /elsewhere, jdbc:h2:file:/elsewhere/demo;",
    })
    void theDemoHasADatabaseOfItsOwn(String demo, String data, String url) throws IOException {
        var asked = new java.util.HashMap<>(Map.of("ripewood.demo", demo));
        if (data != null) {
            asked.put("ripewood.data", data);
        }
        var config =
                new SmallRyeConfigBuilder()
                        .addDefaultInterceptors()
                        .withSources(
                                new PropertiesConfigSource(
                                        getClass().getResource("/application.properties"), 250),
                                new PropertiesConfigSource(asked, "asked for", 300))
                        .build();
        assertThat(config.getValue("quarkus.datasource.jdbc.url", String.class)).startsWith(url);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "TRUE", "1", "maybe", ""})
    void aWordOtherThanTrueAndFalseIsRefused(String word) {
        assertThat(DemoSchool.asked("true")).isTrue();
        assertThat(DemoSchool.asked("false")).isFalse();
        assertThatThrownBy(() -> DemoSchool.asked(word))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("must be true or false, found \"" + word + "\"");
    }

    @Test
    void onlyTheOwnerMayReadTheSignInSheet(@TempDir Path folder) throws IOException {
        var file = folder.resolve("inner").resolve("demo-sign-in.txt");
        OwnerFile.write(file, "first");
        OwnerFile.write(file, "second");
        assertThat(file).hasContent("second");
        assertThat(Files.getPosixFilePermissions(file))
                .isEqualTo(PosixFilePermissions.fromString("rw-------"));
        try (var left = Files.list(file.getParent())) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void theSheetTellsRoleNameAndPassword() {
        var sheet = new SignInSheet();
        sheet.welcome("Ada Fernlea", "ada", Set.of(Role.REGISTRAR, Role.INSTRUCTOR));
        assertThat(sheet.text())
                .contains("instructor and registrar", "Ada Fernlea", "name ada")
                .contains("password " + sheet.passwordOf("ada"));
    }

    @Test
    void aPasswordStaysTheSameOnOneSheetAndIsNewOnTheNext() {
        var sheet = new SignInSheet();
        assertThat(sheet.passwordOf("ada"))
                .matches("([a-z]{4}-){4}[a-z]{4}")
                .isEqualTo(sheet.passwordOf("ada"))
                .isNotEqualTo(sheet.passwordOf("ben"))
                .isNotEqualTo(new SignInSheet().passwordOf("ada"));
    }
}
