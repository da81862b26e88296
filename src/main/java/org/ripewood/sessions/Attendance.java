package org.ripewood.sessions;

import java.util.List;

/**
 * A class date in the life of one person.
 *
 * @param session without who else comes
 * @param course what the course is called
 * @param teaches whether they teach it; otherwise they attend the course
 * @param treeIds of trees they bring
 * @param trees how many trees come in all; 0 for who only attends
 * @param withdrawn whether they were enrolled and no longer are
 */
public record Attendance(
        Session session,
        String course,
        boolean teaches,
        List<Long> treeIds,
        int trees,
        boolean withdrawn) {

    public Attendance {
        treeIds = List.copyOf(treeIds);
    }
}
