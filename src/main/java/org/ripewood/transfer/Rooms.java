package org.ripewood.transfer;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.validation.Validator;
import org.ripewood.assess.Assessments;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.Fault;
import org.ripewood.platform.Refused;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Standings;
import org.ripewood.trees.Trees;

/** The façades an import enters things through. */
@ApplicationScoped
class Rooms {

    final People people;
    final Trees trees;
    final Assessments assessments;
    final Sessions sessions;
    final Standings standings;
    final CourseContent content;
    private final Validator validator;

    Rooms(
            People people,
            Trees trees,
            Assessments assessments,
            Sessions sessions,
            Standings standings,
            CourseContent content,
            Validator validator) {
        this.people = people;
        this.trees = trees;
        this.assessments = assessments;
        this.sessions = sessions;
        this.standings = standings;
        this.content = content;
        this.validator = validator;
    }

    /** The input itself when it keeps the bounds written on it. */
    <T> T checked(T input) {
        var faults =
                validator.validate(input).stream()
                        .map(
                                wrong ->
                                        new Fault(
                                                wrong.getPropertyPath().toString(),
                                                "%s, found \"%s\""
                                                        .formatted(
                                                                wrong.getMessage(),
                                                                wrong.getInvalidValue())))
                        .toList();
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        return input;
    }
}
