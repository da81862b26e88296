package org.ripewood.web.school;

import java.util.List;
import org.ripewood.people.Course;
import org.ripewood.people.Membership;
import org.ripewood.platform.Role;

/** A course with everybody who belongs to it or did. */
record CourseMembers(Course course, List<Membership> memberships) {

    public List<Membership> instructors() {
        return now(Role.INSTRUCTOR);
    }

    public List<Membership> students() {
        return now(Role.STUDENT);
    }

    public List<Membership> current() {
        return memberships.stream().filter(member -> member.leftOn() == null).toList();
    }

    public List<Membership> former() {
        return memberships.stream().filter(member -> member.leftOn() != null).toList();
    }

    private List<Membership> now(Role as) {
        return current().stream().filter(member -> member.as() == as).toList();
    }
}
