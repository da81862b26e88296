package org.ripewood.api;

import java.util.List;

/** Who teaches a course and who attends it, each by name. */
record MembersAnswer(List<Member> instructors, List<Member> students) {

    record Member(long id, String name) {}
}
