package org.ripewood.transfer;

import org.ripewood.people.NewCourse;
import org.ripewood.platform.Role;

/** Reads {@code courses.yaml}: courses and who belongs to them. */
final class CoursesFile {

    private final Rooms rooms;
    private final Script script;

    CoursesFile(Rooms rooms, Script script) {
        this.rooms = rooms;
        this.script = script;
    }

    void read(Entry file, Page page) {
        for (var entry : file.entries("courses")) {
            var course = script.codes().declare(Ref.course(entry.text("code")), entry, "code");
            var by = script.by(entry);
            var input =
                    new NewCourse(entry.text("name"), entry.day("startsOn"), entry.day("endsOn"));
            var instructors = entry.texts("instructors");
            var students = entry.texts("students");
            script.add(
                    entry,
                    page.loadingDay(),
                    register ->
                            register.put(
                                    course,
                                    rooms.courses
                                            .open(register.actor(by), rooms.checked(input))
                                            .id()));
            instructors.forEach(cell -> join(page, course, by, cell, Role.INSTRUCTOR));
            students.forEach(cell -> join(page, course, by, cell, Role.STUDENT));
        }
        file.close();
    }

    private void join(Page page, Ref course, Ref by, Cell member, Role as) {
        var place = Place.of(page.file(), member.line(), "");
        var person = script.codes().mention(Ref.person(member.text()), place, "");
        script.add(
                place,
                page.loadingDay(),
                register ->
                        rooms.courses.join(
                                register.actor(by), register.id(course), register.id(person), as));
    }
}
