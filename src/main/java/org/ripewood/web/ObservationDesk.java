package org.ripewood.web;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.course.FactText;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Today;
import org.ripewood.trees.Observation;
import org.ripewood.trees.Trees;

/** Lays out what the page of observations shows. */
@ApplicationScoped
class ObservationDesk {

    private static final int ROWS = 50;

    private final People people;
    private final Trees trees;
    private final CourseContent content;
    private final Today today;

    ObservationDesk(People people, Trees trees, CourseContent content, Today today) {
        this.people = people;
        this.trees = trees;
        this.content = content;
        this.today = today;
    }

    ObservationSheet lay(Actor actor, long treeId, @Nullable Fact fact, int page, Typed typed) {
        var inForce = content.inForce();
        var observations = trees.observations(actor, treeId, new PageRequest(page, ROWS));
        return new ObservationSheet(
                trees.get(actor, treeId),
                fact,
                fact == null ? null : inForce.text(fact),
                FactLines.recordable(inForce),
                trees.wounds(actor, treeId),
                trees.branches(actor, treeId),
                observations,
                people.names(
                        observations.items().stream()
                                .map(Observation::byId)
                                .collect(Collectors.toSet())),
                inForce.facts().values().stream()
                        .collect(Collectors.toMap(FactText::code, text -> text)),
                typed.refused() ? typed : typed.with("observedOn", today.date()));
    }
}
