package org.ripewood.sample;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;

/** Whoever can read the sample's files; the files' room answers here, which this one lies below. */
public interface SampleLoading {

    /**
     * What was entered.
     *
     * @param people who are made up
     * @param siteId of the site made for it; null when its trees stand at the school's own
     */
    record Loaded(long courseId, List<Long> people, @Nullable Long siteId) {

        public Loaded {
            people = List.copyOf(people);
        }
    }

    /**
     * Enters the sample's course, people, trees and records in the caller's transaction, as of
     * today.
     *
     * @param teacher who teaches it and did what instructors do in it
     * @param siteId where its trees are to stand; null to have a site made
     * @throws Refused 409 when the course content in force does not have what the sample names
     */
    Loaded load(Actor teacher, @Nullable Long siteId);
}
