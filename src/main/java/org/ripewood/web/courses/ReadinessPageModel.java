package org.ripewood.web.courses;

import java.util.List;
import org.ripewood.people.Course;
import org.ripewood.people.Person;
import org.ripewood.readiness.ReadinessAsked;
import org.ripewood.readiness.ReadinessQuery;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.web.kit.FormState;

/**
 * What the first page of a course shows.
 *
 * @param typed the filter as typed
 */
record ReadinessPageModel(
        Course course,
        List<Person> instructors,
        List<Person> students,
        ReadinessSheet sheet,
        ReadinessAsked asked,
        FormState typed) {

    /** The sheet's address on another page of the same filter. */
    public String question(int page) {
        return "/courses/%d?page=%d%s".formatted(course.id(), page, query());
    }

    public String file() {
        return "/courses/%d/readiness.csv?page=0%s".formatted(course.id(), query());
    }

    public String paper() {
        return "/courses/%d/readiness?page=0%s".formatted(course.id(), query());
    }

    private String query() {
        return typed.refused() ? "" : typed.query(ReadinessQuery.FIELDS);
    }

    /** What is asked for in words, for a heading; empty when nothing is. */
    public String askedWords() {
        var heldFrom = asked.heldFrom();
        if (heldFrom == null) {
            return "";
        }
        return "Held from " + titleOf(heldFrom);
    }

    private String titleOf(String heldFrom) {
        if (heldFrom.equals(ReadinessAsked.STYLING)) {
            return "styling";
        }
        return sheet.works().stream()
                .filter(work -> work.code().equals(heldFrom))
                .map(ReadinessSheet.Work::title)
                .findFirst()
                .or(
                        () ->
                                sheet.heldFrom().stream()
                                        .filter(one -> one.code().equals(heldFrom))
                                        .map(ReadinessSheet.Choice::title)
                                        .findFirst())
                .orElse(heldFrom);
    }
}
