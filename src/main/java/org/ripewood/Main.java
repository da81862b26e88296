package org.ripewood;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.ripewood.cases.ContentTrial;

/** Starts the service, or tries a folder of course content without starting it. */
@QuarkusMain
public final class Main {

    private Main() {}

    /**
     * The program.
     *
     * @param args none to start the service; {@code --check-content} and a folder to try content,
     *     and behind it, if there is one, a folder laid over it; {@code --check-added} and a folder
     *     laid over the content inside the program
     */
    public static void main(String... args) {
        if (args.length > 0 && ContentTrial.knows(args[0])) {
            System.exit(new ContentTrial(System.out).of(args));
        }
        Quarkus.run(args);
    }
}
