package org.ripewood.platform.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a crash left of requests is taken away, and nothing that is still coming in. */
@Tag("fast")
class UploadSweepTest {

    private static final Instant NOW = Instant.parse("2026-05-01T12:00:00Z");

    @TempDir Path folder;

    @Test
    void filesOfAnHourAgoAreTakenAwayAndFreshOnesStay() throws Exception {
        var left = file("left", Duration.ofMinutes(61));
        var coming = file("coming", Duration.ofMinutes(59));
        var below = Files.createDirectory(folder.resolve("below"));
        Files.setLastModifiedTime(below, FileTime.from(NOW.minus(Duration.ofDays(2))));

        assertThat(new UploadSweep(folder.toString()).sweep(NOW)).isEqualTo(1);
        assertThat(left).doesNotExist();
        assertThat(coming).exists();
        assertThat(below).exists();
    }

    @Test
    void aFolderThatIsNotThereYetIsNoFault() {
        assertThat(new UploadSweep(folder.resolve("none").toString()).sweep(NOW)).isZero();
    }

    private Path file(String name, Duration age) throws Exception {
        var file = Files.writeString(folder.resolve(name), "half");
        return Files.setLastModifiedTime(file, FileTime.from(NOW.minus(age)));
    }
}
