package org.ripewood.web.many;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.many.ManyObservations;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.TreesTogether;
import org.ripewood.steps.ManySignOffs;
import org.ripewood.trees.CourseTrees;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.FormState;

/** Lays out what the page shows on which something is done to many trees. */
@ApplicationScoped
class ActPageAssembler {

    /** Ready, then held that can be waived, then the others; each by label. */
    private static final Comparator<AssignLine> READY_FIRST =
            Comparator.comparing((AssignLine line) -> !line.ready())
                    .thenComparing(line -> !line.waives())
                    .thenComparing(line -> line.tree().label());

    private final CourseTrees courseTrees;
    private final TreesTogether together;
    private final ManySignOffs signOffs;
    private final CourseContent content;
    private final TreeDays treeDays;

    ActPageAssembler(
            CourseTrees courseTrees,
            TreesTogether together,
            ManySignOffs signOffs,
            CourseContent content,
            TreeDays treeDays) {
        this.courseTrees = courseTrees;
        this.together = together;
        this.signOffs = signOffs;
        this.content = content;
        this.treeDays = treeDays;
    }

    /**
     * @param asked what is chosen
     * @param typed the form that acts; fresh unless it was refused
     */
    ActPageModel lay(
            Actor actor,
            long courseId,
            ActAsked asked,
            FormState choice,
            FormState typed,
            List<ManyObservations.AskedOf> questions) {
        var all = courseTrees.of(actor, courseId);
        var ids = asked.tree() == null ? all.trees().stream().map(Tree::id).toList() : asked.tree();
        var chosen = courseTrees.chosen(actor, courseId, ids, "tree[%d]").trees();
        var inForce = content.inForce();
        var act = asked.act();
        var code = act == Act.ASSIGN ? asked.technique() : null;
        var names =
                all.roster().students().stream()
                        .collect(Collectors.toMap(Person::id, Person::name));
        var fact =
                act == Act.RECORD && asked.fact() != null
                        ? Fact.find(asked.fact()).orElse(null)
                        : null;
        var lines =
                code == null
                        ? List.<AssignLine>of()
                        : together.look(actor, courseId, code, ids).stream()
                                .map(
                                        one ->
                                                new AssignLine(
                                                        one.tree(),
                                                        names.getOrDefault(
                                                                one.tree().keeperId(), ""),
                                                        one.standing()))
                                .sorted(READY_FIRST)
                                .toList();
        return new ActPageModel(
                all.roster().course(),
                all.trees(),
                chosen,
                names,
                act,
                code == null ? null : inForce.technique(code),
                lines,
                fact,
                fact == null ? null : inForce.text(fact),
                act == Act.SIGN_OFF ? signOffs.reported(actor, courseId, ids) : List.of(),
                questions,
                actor.is(Role.INSTRUCTOR),
                inForce,
                choice.withAll("tree", ids),
                typed.refused() ? typed : fresh(courseId, act, lines, chosen));
    }

    /** Ready trees are ticked for a step, all for a fact, and no report before it was read. */
    private FormState fresh(
            long courseId, @Nullable Act act, List<AssignLine> lines, List<Tree> chosen) {
        if (act == Act.ASSIGN) {
            return FormState.fresh("assign")
                    .withAll(
                            "tree",
                            lines.stream()
                                    .filter(AssignLine::ready)
                                    .map(line -> line.tree().id())
                                    .toList());
        }
        return FormState.fresh("act")
                .with("observedOn", treeDays.ofCourse(courseId))
                .withAll("tree", chosen.stream().map(Tree::id).toList());
    }
}
