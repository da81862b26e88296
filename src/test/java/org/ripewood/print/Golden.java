package org.ripewood.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Papers as they were looked at and found good; renewed with {@code -Dgolden.renew=true}. */
final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/golden/print");

    private Golden() {}

    static void assertUnchanged(String name, String text) throws IOException {
        var file = FOLDER.resolve(name + ".txt");
        if (Boolean.getBoolean("golden.renew")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, text);
        }
        assertThat(file).as("renew with -Dgolden.renew=true and look at it").exists();
        assertThat(text).isEqualTo(Files.readString(file));
    }
}
