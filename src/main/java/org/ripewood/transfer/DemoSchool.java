package org.ripewood.transfer;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.interceptor.Interceptor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.platform.Today;

/**
 * Starts the service on the demo school when asked to. Its passwords are printed in the log, so it
 * answers this machine only.
 */
@ApplicationScoped
class DemoSchool {

    private static final Logger LOG = Logger.getLogger(DemoSchool.class);
    private static final String RULE = "-".repeat(92);

    private final String demo;
    private final Path data;
    private final SchoolImport schoolImport;
    private final PersonRegistration register;
    private final Today today;
    private final String host;
    private final int port;

    DemoSchool(
            @ConfigProperty(name = "ripewood.demo", defaultValue = "false") String demo,
            @ConfigProperty(name = "ripewood.data", defaultValue = "./data") Path data,
            SchoolImport schoolImport,
            PersonRegistration register,
            Today today,
            @ConfigProperty(name = "quarkus.http.host") String host,
            @ConfigProperty(name = "quarkus.http.port") int port) {
        this.demo = demo;
        this.data = data;
        this.schoolImport = schoolImport;
        this.register = register;
        this.today = today;
        this.host = host;
        this.port = port;
    }

    /** Before anybody else looks whether the school is empty. */
    void onStart(@Observes @Priority(Interceptor.Priority.PLATFORM_BEFORE) StartupEvent event) {
        if (asked(demo)) {
            requireLoopback(host);
            if (register.schoolIsEmpty()) {
                load();
            }
            tellHowToSignIn();
        }
    }

    /**
     * Whether the demo school is asked for.
     *
     * @throws IllegalStateException for every other word, so that nobody believes to be on the one
     *     database while being on the other
     */
    static boolean asked(String word) {
        return switch (word) {
            case "true" -> true;
            case "false" -> false;
            default ->
                    throw new IllegalStateException(
                            "RIPEWOOD_DEMO must be true or false, found \"%s\".".formatted(word));
        };
    }

    /**
     * Refuses every host others can reach.
     *
     * @throws IllegalStateException when the host is not a loopback address
     */
    static void requireLoopback(String host) {
        try {
            if (InetAddress.getByName(host).isLoopbackAddress()) {
                return;
            }
        } catch (UnknownHostException e) {
            // A name nobody knows is no loopback address either.
        }
        throw new IllegalStateException(
                ("The demo school prints its passwords and may listen on this machine only; "
                                + "quarkus.http.host is \"%s\". Maybe leave it out, or unset"
                                + " RIPEWOOD_DEMO to run a real school.")
                        .formatted(host));
    }

    private void load() {
        LOG.info("Loading the demo school.");
        var sheet = new SignInSheet();
        schoolImport.load(
                SchoolFiles.demo(),
                today.date(),
                sheet,
                () -> {
                    try {
                        OwnerFile.write(sheetFile(), sheet.text());
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
    }

    private void tellHowToSignIn() {
        var lines = new StringBuilder();
        lines.append("%n%s%n".formatted(RULE));
        lines.append("  This is the demo school. Sign in at http://");
        lines.append("%s:%d/sign-in as one of:%n%n".formatted(shownHost(), port));
        lines.append(sheetText());
        lines.append("%n%n  Kept in %s%n".formatted(sheetFile().toAbsolutePath().normalize()));
        lines.append(RULE);
        LOG.info(lines);
    }

    private String shownHost() {
        return host.contains(":") ? "[" + host + "]" : host;
    }

    private String sheetText() {
        try {
            return Files.readString(sheetFile());
        } catch (IOException e) {
            return ("  The sheet with the passwords is gone. Stop the service, delete the demo's"
                            + " database in %s and start again.")
                    .formatted(data.toAbsolutePath().normalize());
        }
    }

    private Path sheetFile() {
        return data.resolve("demo-sign-in.txt");
    }
}
