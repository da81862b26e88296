package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Pictures as they were looked at and found good; renewed with {@code -Dgolden.renew=true}. */
final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/golden/pictures");

    private Golden() {}

    static void assertUnchanged(String name, Picture picture) throws IOException {
        var file = FOLDER.resolve(name + ".svg");
        if (Boolean.getBoolean("golden.renew")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, picture.svg());
        }
        assertThat(file).as("renew with -Dgolden.renew=true and look at it").exists();
        assertThat(picture.svg()).isEqualTo(Files.readString(file));
    }
}
