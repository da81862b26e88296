package org.ripewood.web.courses;

import jakarta.validation.constraints.NotNull;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.NewRoll;
import org.ripewood.sessions.Presence;

/** Who came, as the form of a class sends it: a field for each student, named by their number. */
record RollForm(@NotNull Long version, @Nullable Map<String, Presence> mark) {

    NewRoll roll() {
        if (mark == null) {
            throw Refused.invalid("mark", "expected a mark for at least one student, found none");
        }
        List<NewRoll.Said> said = new ArrayList<>();
        mark.forEach((person, presence) -> said.add(new NewRoll.Said(id(person), presence)));
        return new NewRoll(said);
    }

    private static long id(String person) {
        if (!person.matches("\\d{1,18}")) {
            throw Refused.invalid("mark", "expected the number of a student, found " + person);
        }
        return Long.parseLong(person);
    }
}
