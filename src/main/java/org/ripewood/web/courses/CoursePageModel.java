package org.ripewood.web.courses;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.ripewood.boards.Board;
import org.ripewood.boards.BoardAsked;
import org.ripewood.course.Content;
import org.ripewood.course.Species;
import org.ripewood.people.Course;
import org.ripewood.people.Person;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.SpeciesNames;

/**
 * What the pages of a course show that tell of its board.
 *
 * @param filter the filter as typed
 */
record CoursePageModel(
        Course course,
        Board board,
        BoardAsked asked,
        FormState filter,
        Content content,
        List<Person> instructors,
        List<Person> students) {

    public Map<String, String> speciesNames() {
        return SpeciesNames.of(content);
    }

    public Collection<Species> species() {
        return content.species().values();
    }

    public String stageTitle(String code) {
        return content.stages().stream()
                .filter(stage -> stage.code().equals(code))
                .map(stage -> stage.title())
                .findFirst()
                .orElse(code);
    }

    /** The board's address on another page of the same filter. */
    public String question(int page) {
        return "/courses/%d/next?page=%d%s"
                .formatted(course.id(), page, filter.query(BoardFilter.FIELDS));
    }

    /** The file of what the filter shows. */
    public String file() {
        return "/courses/%d/board.csv?page=0%s"
                .formatted(course.id(), filter.query(BoardFilter.FIELDS));
    }
}
