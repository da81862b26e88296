package org.ripewood.platform.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("fast")
class SessionKeyTest {

    @TempDir Path home;

    @Test
    void theKeyIsMadeOnceAndReadFromThenOn() throws IOException {
        var first = new SessionKey(home.resolve("data")).read();

        assertThat(first).hasSizeGreaterThanOrEqualTo(43);
        assertThat(new SessionKey(home.resolve("data")).read()).isEqualTo(first);
        assertThat(new SessionKey(home.resolve("other")).read()).isNotEqualTo(first);
        try (var files = Files.list(home.resolve("data"))) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void onlyItsOwnerMayReadIt() throws IOException {
        new SessionKey(home.resolve("data")).read();

        assertThat(rights(home.resolve("data/session.key"))).isEqualTo("rw-------");
        assertThat(rights(home.resolve("data"))).isEqualTo("rwx------");
    }

    @Test
    void aSpoiledKeyIsToldWithTheFile() throws IOException {
        Files.writeString(home.resolve("session.key"), "short");

        assertThatThrownBy(() -> new SessionKey(home).read())
                .hasMessageContaining("session.key")
                .hasMessageContaining("expected 16 characters, found 5");
    }

    @Test
    void theSourceKnowsOnlyTheKey() {
        var source = new SessionKeySource(home);

        assertThat(source.getValue("quarkus.http.port")).isNull();
        assertThat(home.resolve("session.key")).doesNotExist();
        assertThat(source.getValue(SessionKeySource.PROPERTY)).isNotBlank();
    }

    private static String rights(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }
}
