package org.ripewood.archive;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Copies of the embedded database, which no program beside the service can read while it runs. */
@ApplicationScoped
public class Backups {

    /** Sorts by time and is a file name everywhere. */
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'ripewood-'uuuuMMdd'T'HHmmss.SSS'Z.zip'", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);

    private final DataSource database;
    private final Audit audit;
    private final Today today;
    private final Path folder;

    Backups(
            DataSource database,
            Audit audit,
            Today today,
            @ConfigProperty(name = "ripewood.data", defaultValue = "./data") String data) {
        this.database = database;
        this.audit = audit;
        this.today = today;
        this.folder = Path.of(data, "backups");
    }

    /**
     * Copies the database as it is at one moment into a file of its own, while others go on
     * writing; registrars only. Photos and the session key are files already and are not in it.
     *
     * @throws Refused 409 on a database with a program of its own for this
     */
    @Transactional
    public Backup make(Actor actor) {
        actor.require(Role.REGISTRAR, "back the school up");
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            if (!connection.getMetaData().getURL().startsWith("jdbc:h2:file:")) {
                throw Refused.conflict(
                        "This school is not kept in a file of the service's own.",
                        "Maybe use the database's own program, such as pg_dump.");
            }
            Files.createDirectories(folder);
            var file = folder.resolve(NAME.format(today.now()));
            statement.execute(
                    "backup to '%s'"
                            .formatted(file.toAbsolutePath().toString().replace("'", "''")));
            audit.note(Deed.BACKED_UP, actor.personId());
            return new Backup(file.getFileName().toString(), Files.size(file));
        } catch (SQLException e) {
            throw new IllegalStateException("the backup could not be made", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
