package org.ripewood;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.Arrays;
import org.ripewood.cases.ContentTrial;

/** Starts the service, or tries a folder of course content without starting it. */
@QuarkusMain
public final class Main {

    private static final String CHECK_CONTENT = "--check-content";

    private Main() {}

    /**
     * The program.
     *
     * @param args none to start the service; {@code --check-content} and a folder to try content
     */
    public static void main(String... args) {
        if (args.length > 0 && args[0].equals(CHECK_CONTENT)) {
            var folders = Arrays.copyOfRange(args, 1, args.length);
            System.exit(new ContentTrial(System.out).of(folders));
        }
        Quarkus.run(args);
    }
}
