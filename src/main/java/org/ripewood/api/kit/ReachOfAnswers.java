package org.ripewood.api.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.materials.Materials;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.StillReached;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.Sessions;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Trees;

/**
 * Asks the rooms whether somebody reaches what an address names: the request's own, or, where that
 * names nothing, the one of what was made.
 */
@ApplicationScoped
class ReachOfAnswers implements StillReached {

    private static final Pattern NAMED =
            Pattern.compile(Answers.ROOT + "([a-z-]+)/(\\d{1,18})(?:/.*)?");

    private final Trees trees;
    private final Steps steps;
    private final People people;
    private final Sessions sessions;
    private final Courses courses;
    private final Materials materials;

    ReachOfAnswers(
            Trees trees,
            Steps steps,
            People people,
            Sessions sessions,
            Courses courses,
            Materials materials) {
        this.trees = trees;
        this.steps = steps;
        this.people = people;
        this.sessions = sessions;
        this.courses = courses;
        this.materials = materials;
    }

    @Override
    public void require(Actor actor, String path, @Nullable String location) {
        var asked = NAMED.matcher(path);
        var made = NAMED.matcher(location == null ? "" : location);
        if (asked.matches()) {
            require(actor, asked);
        } else if (made.matches()) {
            require(actor, made);
        } else {
            throw new IllegalStateException("nothing says what was answered by " + path);
        }
    }

    private void require(Actor actor, Matcher named) {
        var id = Long.parseLong(named.group(2));
        switch (named.group(1)) {
            case "trees" -> trees.get(actor, id);
            case "steps" -> steps.get(actor, id);
            case "sessions" -> sessions.get(actor, id);
            case "courses" -> courses.get(actor, id);
            case "stock" -> materials.get(actor, id);
            case "people" -> requirePerson(actor, id);
            default -> throw new IllegalStateException("nobody says who reaches " + named.group());
        }
    }

    private void requirePerson(Actor actor, long personId) {
        if (!people.reaches(actor, personId)) {
            throw Refused.notFound("person", personId);
        }
    }
}
