package org.ripewood.transfer;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.NewGuest;
import org.ripewood.assess.NewSkillJudgement;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.school.NewSchoolName;

/**
 * Reads {@code people.yaml}: the name of the school if it has one, persons, and the skills they
 * have shown.
 */
final class PeopleFile {

    /**
     * An import fills an empty school, in which nobody is registrar yet; whoever starts the service
     * stands in for one. No person has this id.
     */
    private static final Actor FOUNDER = new Actor(0, Set.of(Role.REGISTRAR));

    private final Rooms rooms;
    private final Script persons;
    private final Script skills;
    private final SignInSheet sheet;
    private final @Nullable Given given;

    /**
     * @param skills apart, because a student's teacher is known only with the courses
     * @param sheet makes the passwords
     * @param given what a sample finds at the school; null for a school of its own
     */
    PeopleFile(
            Rooms rooms, Script persons, Script skills, SignInSheet sheet, @Nullable Given given) {
        this.given = given;
        this.rooms = rooms;
        this.persons = persons;
        this.skills = skills;
        this.sheet = sheet;
    }

    void read(Entry file, Page page) {
        var school = file.textOrNull("school");
        if (school != null) {
            nameSchool(file, page, school);
        }
        readTeacher(file, page);
        for (var entry : file.entries("people")) {
            readPerson(entry, page);
        }
        file.close();
    }

    /** Logins that stand for whoever adds a sample. */
    private void readTeacher(Entry file, Page page) {
        for (var login : file.texts("teacher")) {
            var teacher = persons.codes().declare(Ref.person(login.text()), file, "teacher");
            if (given == null) {
                file.fault("teacher", "only a sample has one; a school names its people");
            } else {
                var actor = given.teacher();
                persons.add(
                        Place.of(page.file(), login.line(), "teacher"),
                        page.loadingDay(),
                        register -> register.put(teacher, actor));
            }
        }
    }

    private void nameSchool(Entry file, Page page, String name) {
        persons.add(
                file.place(),
                page.loadingDay(),
                register -> {
                    var input = rooms.checked(new NewSchoolName(name));
                    rooms.school.name(FOUNDER, rooms.school.get().version(), input);
                });
    }

    private void readPerson(Entry entry, Page page) {
        var login = entry.text("login");
        var person = persons.codes().declare(Ref.person(login), entry, "login");
        var name = entry.text("name");
        var roles = roles(entry);
        if (entry.flag("welcome")) {
            sheet.welcome(name, login, roles);
        }
        for (var skill : entry.entries("skills")) {
            readSkill(skill, person);
        }
        persons.add(
                entry,
                page.loadingDay(),
                register -> {
                    var entered = enter(name, login, roles);
                    register.put(person, new Actor(entered.id(), entered.roles()));
                });
    }

    /** People of a sample are made up: they have no password that anybody knows. */
    private Person enter(String name, String login, Set<Role> roles) {
        return given == null
                ? rooms.register.enter(
                        FOUNDER,
                        rooms.checked(new NewPerson(name, login, sheet.passwordOf(login), roles)))
                : rooms.register.enterMadeUp(
                        given.teacher(),
                        rooms.checked(new NewGuest(name, given.login(login), roles)));
    }

    private static Set<Role> roles(Entry entry) {
        var roles = EnumSet.noneOf(Role.class);
        for (var cell : entry.texts("roles")) {
            try {
                roles.add(Role.valueOf(cell.text()));
            } catch (IllegalArgumentException e) {
                entry.fault(
                        "roles",
                        "expected STUDENT, INSTRUCTOR or REGISTRAR, found \"%s\"%s"
                                .formatted(
                                        cell.text(),
                                        cell.text().toUpperCase(Locale.ROOT).equals(cell.text())
                                                ? ""
                                                : ". Maybe in capitals."));
            }
        }
        return roles;
    }

    private void readSkill(Entry entry, Ref student) {
        var by = skills.by(entry);
        var day = entry.day("day");
        var lesson = entry.text("lesson");
        var shown = entry.flag("shown");
        var note = entry.textOrNull("note");
        skills.add(
                entry,
                day,
                register -> {
                    var input = rooms.checked(new NewSkillJudgement(lesson, shown, day, note));
                    rooms.assessments.judge(register.actor(by), register.id(student), input);
                });
    }
}
