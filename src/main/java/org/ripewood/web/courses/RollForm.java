package org.ripewood.web.courses;

import jakarta.validation.constraints.NotNull;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.NewRoll;
import org.ripewood.sessions.Presence;
import org.ripewood.sessions.Roll;

/**
 * Who came, as the form of a class sends it: a field for each student, named by their number.
 *
 * @param others what is said of all students who have no mark; null for nothing
 */
record RollForm(
        @NotNull Long version, @Nullable Map<String, Presence> mark, @Nullable Presence others) {

    /**
     * The marks.
     *
     * @param now who is enrolled, and what is marked already
     */
    NewRoll roll(Roll now) {
        var said = others == null ? new ArrayList<NewRoll.Said>() : ofOthers(now, others);
        if (mark == null && said.isEmpty()) {
            throw Refused.invalid("mark", "expected a mark for at least one student, found none");
        }
        if (mark != null) {
            mark.forEach((person, presence) -> said.add(new NewRoll.Said(id(person), presence)));
        }
        return new NewRoll(said);
    }

    private List<NewRoll.Said> ofOthers(Roll now, Presence presence) {
        var said = new ArrayList<NewRoll.Said>();
        for (var line : now.lines()) {
            var named = mark != null && mark.containsKey(Long.toString(line.personId()));
            if (!named && line.mark() == null) {
                said.add(new NewRoll.Said(line.personId(), presence));
            }
        }
        return said;
    }

    private static long id(String person) {
        if (!person.matches("\\d{1,18}")) {
            throw Refused.invalid("mark", "expected the number of a student, found " + person);
        }
        return Long.parseLong(person);
    }
}
