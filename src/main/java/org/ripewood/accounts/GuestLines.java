package org.ripewood.accounts;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Course;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Suggestion;

/**
 * Reads a list of people to be invited: a person a line, "name; sign-in name; role; course", of
 * which all but the name may be left out. Between them stands a semicolon, or a tab as a table is
 * copied. Several roles have commas or plus signs between them. Lines without anything, and a
 * heading that begins with "name", are passed over.
 *
 * <p>Left out, the sign-in name is proposed, the role is student, and there is no course.
 */
final class GuestLines {

    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_LOGIN = 60;
    private static final int FIELDS = 4;

    private static final Map<String, Role> ROLES =
            Map.of(
                    "student", Role.STUDENT,
                    "instructor", Role.INSTRUCTOR,
                    "registrar", Role.REGISTRAR);

    private final Set<String> given;
    private final List<Course> courses;
    private final Set<String> written = new HashSet<>();

    /**
     * @param given sign-in names that somebody has already
     * @param courses that can be joined
     */
    GuestLines(Set<String> given, List<Course> courses) {
        this.given = given;
        this.courses = courses;
    }

    List<GuestLine> read(String text) {
        var rows = rows(text);
        // a name that somebody wrote is not proposed to anybody else, wherever it stands
        rows.forEach(row -> written.add(row.cell(1).toLowerCase(Locale.ROOT)));
        var seen = new HashSet<String>();
        return rows.stream().map(row -> line(row, seen)).toList();
    }

    private record Row(int number, List<String> cells) {

        String cell(int index) {
            return index < cells.size() ? cells.get(index).strip() : "";
        }
    }

    private static List<Row> rows(String text) {
        var rows = new ArrayList<Row>();
        int number = 0;
        for (var line : text.split("\\R", -1)) {
            number++;
            var row = new Row(number, List.of(line.split(line.contains(";") ? ";" : "\t", -1)));
            var heading = rows.isEmpty() && row.cell(0).equalsIgnoreCase("name");
            if (!line.isBlank() && !heading) {
                rows.add(row);
            }
        }
        return rows;
    }

    private GuestLine line(Row row, Set<String> seen) {
        var faults = new ArrayList<String>();
        var name = row.cell(0);
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            faults.add("expected a name of at most 120 characters first");
        }
        var login = login(row.cell(1), name, seen, faults);
        var roles = roles(row.cell(2), faults);
        var course = course(row.cell(3), roles, faults);
        for (int i = FIELDS; i < row.cells().size(); i++) {
            if (!row.cell(i).isEmpty()) {
                faults.add(
                        "expected name; sign-in name; role; course and no more, found “%s” as well"
                                .formatted(row.cell(i)));
            }
        }
        return new GuestLine(row.number(), name, login, roles, course, false, faults);
    }

    private String login(String typed, String name, Set<String> seen, List<String> faults) {
        if (typed.isEmpty()) {
            var proposed =
                    SignInNames.proposed(
                            name,
                            one ->
                                    given.contains(one)
                                            || written.contains(one)
                                            || seen.contains(one));
            seen.add(proposed);
            if (proposed.isEmpty() && !name.isEmpty()) {
                faults.add("no sign-in name can be made of this name; write one behind it");
            }
            return proposed;
        }
        var login = typed.toLowerCase(Locale.ROOT);
        if (!login.matches(NewPerson.LOGIN) || login.length() > LONGEST_LOGIN) {
            faults.add(
                    "expected a sign-in name of at most 60 %s, found “%s”"
                            .formatted(NewPerson.LOGIN_WORDS, typed));
        } else if (given.contains(login)) {
            faults.add("the sign-in name “%s” is somebody's already".formatted(login));
        } else if (!seen.add(login)) {
            faults.add("the sign-in name “%s” stands in a line above, too".formatted(login));
        }
        return login;
    }

    private static Set<Role> roles(String typed, List<String> faults) {
        var roles = EnumSet.noneOf(Role.class);
        if (typed.isEmpty()) {
            roles.add(Role.STUDENT);
            return roles;
        }
        for (var word : typed.split("[,+]", -1)) {
            var small = word.strip().toLowerCase(Locale.ROOT);
            var role = ROLES.get(small);
            if (role != null) {
                roles.add(role);
            } else {
                faults.add(
                        "expected student, instructor or registrar as role, found “%s”.%s"
                                .formatted(word.strip(), Suggestion.maybe(ROLES.keySet(), small)));
            }
        }
        return roles;
    }

    private @Nullable Course course(String typed, Set<Role> roles, List<String> faults) {
        if (typed.isEmpty()) {
            return null;
        }
        var found = courses.stream().filter(one -> one.name().equalsIgnoreCase(typed)).toList();
        if (found.size() == 1) {
            if (roles.equals(EnumSet.of(Role.REGISTRAR))) {
                faults.add("who joins a course is a student or an instructor, too");
            }
            return found.get(0);
        }
        var names = courses.stream().map(Course::name).collect(Collectors.toSet());
        faults.add(
                found.isEmpty()
                        ? "there is no course “%s” that goes on or is to come.%s"
                                .formatted(typed, Suggestion.maybe(names, typed))
                        : "%d courses are called “%s”; leave it out and add them afterwards"
                                .formatted(found.size(), typed));
        return null;
    }
}
