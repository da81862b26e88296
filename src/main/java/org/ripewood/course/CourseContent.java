package org.ripewood.course;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.util.List;
import org.jboss.logging.Logger;
import org.ripewood.platform.Markdown;

/** The content in force, and how it is renewed. */
@Startup
@ApplicationScoped
public class CourseContent {

    private static final Logger LOG = Logger.getLogger(CourseContent.class);

    private final ContentPlace place;
    private final ContentReading reading;
    private volatile Content inForce;

    /** Reads the content; the service does not start on faulty content. */
    CourseContent(ContentPlace place, Markdown markdown) {
        this.place = place;
        this.reading = new ContentReading(markdown::html);
        var outcome = read();
        if (outcome.content() == null) {
            throw new FaultyContent(outcome.faults());
        }
        this.inForce = outcome.content();
        tell(inForce);
    }

    /** The content in force; the same object until a faultless reading replaces it. */
    public Content inForce() {
        return inForce;
    }

    /**
     * Reads the files again. Faultless: the new content is in force and the list is empty.
     * Otherwise the content in force stays and every fault is told.
     */
    public synchronized List<ContentFault> renew() {
        var outcome = read();
        if (outcome.content() == null) {
            LOG.warnf("The course content in force stays: %d fault(s)", outcome.faults().size());
        } else if (!outcome.content().revision().equals(inForce.revision())) {
            inForce = outcome.content();
            tell(inForce);
        }
        return outcome.faults();
    }

    private ContentReading.Outcome read() {
        var faults = new Faults();
        var folder = place.folder();
        if (folder.isEmpty()) {
            return reading.read(ContentFiles.inJar(), faults);
        }
        try {
            return reading.read(ContentFiles.in(folder.get(), faults), faults);
        } catch (IOException e) {
            faults.add(
                    folder.get().toString(),
                    0,
                    "a folder that cannot be read (%s)".formatted(e.getClass().getSimpleName()),
                    "a readable folder with course content");
            return new ContentReading.Outcome(null, faults.all());
        }
    }

    private static void tell(Content content) {
        LOG.infof(
                "Course content %s: %d species, %d techniques, %d lessons",
                content.revision(),
                content.species().size(),
                content.techniques().size(),
                content.lessons().size());
    }
}
