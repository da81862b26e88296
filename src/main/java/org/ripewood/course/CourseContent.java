package org.ripewood.course;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** The content in force, and how it is renewed. */
@ApplicationScoped
public class CourseContent {

    /** The content in force; the same object until a faultless reading replaces it. */
    public Content inForce() {
        throw new IllegalStateException("to be built");
    }

    /**
     * Reads the files again. Faultless: the new content is in force and the list is empty.
     * Otherwise the content in force stays and every fault is told.
     */
    public List<ContentFault> renew() {
        throw new IllegalStateException("to be built");
    }
}
