package org.ripewood.sample;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sample course, and what goes with it when it is thrown away.
 *
 * @param name of the course
 * @param people who are made up, by name
 * @param guests people of the school who belong to the course, by name; they stay at the school
 * @param site the site that was made for it; null when its trees stand at the school's own
 * @param siteStays whether that site stays, because a tree of the school's own stands or stood
 *     there
 */
public record SampleSheet(
        long courseId,
        String name,
        List<String> people,
        List<String> guests,
        int trees,
        int photos,
        int sessions,
        int entries,
        @Nullable String site,
        boolean siteStays) {

    public SampleSheet {
        people = List.copyOf(people);
        guests = List.copyOf(guests);
    }
}
