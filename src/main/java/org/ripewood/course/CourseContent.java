package org.ripewood.course;

import io.quarkus.arc.Unremovable;
import io.quarkus.flyway.FlywayConfigurationCustomizer;
import io.quarkus.runtime.PreventFurtherStepsException;
import io.quarkus.runtime.Startup;
import io.quarkus.runtime.StartupEvent;
import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithParentName;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Markdown;
import org.ripewood.platform.records.CodesInUse;

/** The content in force, and how it is renewed. */
@Startup
@ApplicationScoped
public class CourseContent {

    private static final Logger LOG = Logger.getLogger(CourseContent.class);

    /** Where the course content is read from. */
    @ConfigMapping(prefix = "ripewood.content")
    interface Place {

        /**
         * A folder with the school's own content; the content inside the jar when it is not set.
         */
        @WithParentName
        Optional<Path> folder();

        /**
         * A folder laid over the content: its files are added, and stand in the place of files with
         * the same path.
         */
        Optional<Path> added();
    }

    private final ContentReading.Folders folders;
    private final Supplier<List<CodesInUse.Use>> inUse;
    private final ContentReading reading;
    private volatile Content inForce;

    /**
     * Reads the content; the service does not start on faulty content. What records name is asked
     * for later, since the database may not be there yet.
     */
    @Inject
    CourseContent(Place place, Markdown markdown, Instance<CodesInUse> inUse) {
        this(place, markdown, () -> inUse.get().all());
    }

    CourseContent(Place place, Markdown markdown, Supplier<List<CodesInUse.Use>> inUse) {
        this.folders =
                new ContentReading.Folders(place.folder().orElse(null), place.added().orElse(null));
        this.inUse = inUse;
        this.reading = new ContentReading(markdown::html);
        var outcome = folders.read(reading);
        if (outcome.content() == null) {
            throw new FaultyContent(outcome.faults());
        }
        this.inForce = outcome.content();
        tell(inForce);
    }

    /**
     * What came of reading content that is not to be put in force.
     *
     * @param content null when there are faults
     */
    public record Checked(@Nullable Content content, List<ContentFault> faults) {}

    /**
     * Reads the content of folders without putting it in force.
     *
     * @param base null for the content inside the program
     * @param added laid over it; null for none. Faults and cases then name the folder as well
     */
    public static Checked check(@Nullable Path base, @Nullable Path added) {
        var reading = new ContentReading(UnaryOperator.identity());
        var outcome = new ContentReading.Folders(base, added).read(reading);
        return new Checked(outcome.content(), outcome.faults());
    }

    /** The content in force; the same object until a faultless reading replaces it. */
    public Content inForce() {
        return inForce;
    }

    /**
     * Reads the files again. Faultless: the new content is in force and the list is empty.
     * Otherwise the content in force stays and every fault is told; what records name and the files
     * do not have is among them.
     */
    public synchronized List<ContentFault> renew() {
        var outcome = folders.read(reading);
        var content = outcome.content();
        var faults =
                content == null ? outcome.faults() : RecordedCodes.missing(content, inUse.get());
        if (content == null || !faults.isEmpty()) {
            LOG.warnf("The course content in force stays: %d fault(s)", faults.size());
        } else if (!content.revision().equals(inForce.revision())
                || !content.ofSchool().equals(inForce.ofSchool())) {
            inForce = content;
            tell(inForce);
        }
        return faults;
    }

    /**
     * The service starts although its records name what the content does not have: the records are
     * the school's, and are shown as they are. The log tells of it.
     */
    void tellWhatIsMissing(@Observes StartupEvent started) {
        var missing = RecordedCodes.missing(inForce, inUse.get());
        if (!missing.isEmpty()) {
            LOG.warn(FaultyContent.told("Records name what the course content lacks", missing));
        }
    }

    /** Reads the content before the database is touched: faulty content changes nothing there. */
    @Unremovable
    @ApplicationScoped
    static class BeforeMigrations implements FlywayConfigurationCustomizer {

        private final CourseContent content;

        BeforeMigrations(CourseContent content) {
            this.content = content;
        }

        @Override
        public void customize(FluentConfiguration configuration) {
            content.inForce();
        }
    }

    private static void tell(Content content) {
        LOG.infof(
                "Course content %s: %d species, %d techniques, %d lessons;"
                        + " %d file(s) of them laid over by the school",
                content.revision(),
                content.species().size(),
                content.techniques().size(),
                content.lessons().size(),
                content.ofSchool().size());
    }

    /**
     * Ends the start of the service: there is no content that could be put in force. Its cause is
     * what the framework prints without a stack trace, since nothing is wrong with the program.
     */
    static final class FaultyContent extends IllegalStateException {

        FaultyContent(List<ContentFault> faults) {
            this(told("The course content has %d fault(s)".formatted(faults.size()), faults));
        }

        private FaultyContent(String message) {
            super(message, new PreventFurtherStepsException(message, 1));
        }

        /** All faults, each on a line of its own. */
        static String told(String heading, List<ContentFault> faults) {
            return faults.stream()
                    .map(ContentFault::told)
                    .collect(Collectors.joining("\n  ", heading + ":\n  ", ""));
        }
    }
}
