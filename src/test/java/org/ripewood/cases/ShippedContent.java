package org.ripewood.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.ripewood.course.Content;
import org.ripewood.course.ContentFault;
import org.ripewood.course.CourseContent;

/** The content that travels with the program, read once for all tests of cases. */
public final class ShippedContent {

    public static final Path FOLDER = Path.of("course-content");

    public static final Content CONTENT = read();

    private ShippedContent() {}

    private static Content read() {
        var checked = CourseContent.check(FOLDER, null);
        assertThat(checked.faults()).extracting(ContentFault::told).isEmpty();
        return Objects.requireNonNull(checked.content());
    }
}
