package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("one-database")
@QuarkusTest
class ContentAtStartTest {

    @Inject CourseContent courseContent;

    @Test
    void theServiceStartsOnTheContentItTravelsWith() {
        var content = courseContent.inForce();
        assertThat(content.revision()).isEqualTo(ContentFiles.inJar().revision());
        assertThat(content.lesson("wiring-branches").html()).contains("<h2>What</h2>");
    }

    @Test
    void renewingWithoutAnEditKeepsTheVeryContent() {
        var before = courseContent.inForce();
        assertThat(courseContent.renew()).isEmpty();
        assertThat(courseContent.inForce()).isSameAs(before);
    }
}
