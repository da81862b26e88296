package org.ripewood.web.many;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.Content;
import org.ripewood.course.FactText;
import org.ripewood.course.Stage;
import org.ripewood.course.Technique;
import org.ripewood.many.ManyObservations;
import org.ripewood.people.Course;
import org.ripewood.steps.ManySignOffs;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.TextFormat;

/**
 * What the page shows on which something is done to many trees.
 *
 * @param trees all of the course
 * @param chosen those it is done to
 * @param keepers names of the keepers, by id
 * @param fact the fact to be recorded; null while none is chosen
 * @param questions what is asked before odd values are kept
 * @param teaches whether the reader may assign and sign off
 * @param asked the form that chooses
 * @param typed the form that acts
 */
record ActPageModel(
        Course course,
        List<Tree> trees,
        List<Tree> chosen,
        Map<Long, String> keepers,
        @Nullable Act act,
        @Nullable Technique technique,
        List<AssignLine> lines,
        @Nullable Fact fact,
        @Nullable FactText text,
        List<ManySignOffs.Reported> reported,
        List<ManyObservations.AskedOf> questions,
        boolean teaches,
        Content content,
        FormState asked,
        FormState typed) {

    /** Techniques under the stage they belong to. */
    record OfStage(Stage stage, List<Technique> techniques) {}

    /** A fact of the tree as a whole that may be recorded. */
    record FactChoice(Fact fact, FactText text) {}

    /** What the reader may do: assigning and signing off are an instructor's. */
    public List<Act> acts() {
        return teaches ? List.of(Act.values()) : List.of(Act.RECORD, Act.CARDS);
    }

    public List<OfStage> stages() {
        return content.stages().stream()
                .map(
                        stage ->
                                new OfStage(
                                        stage,
                                        content.techniques().values().stream()
                                                .filter(one -> one.stage().equals(stage.code()))
                                                .toList()))
                .toList();
    }

    public List<FactChoice> facts() {
        return List.of(Fact.values()).stream()
                .filter(one -> one.recordable() && one.scope() == Fact.Scope.TREE)
                .filter(one -> teaches || !one.instructorsWord())
                .map(one -> new FactChoice(one, content.text(one)))
                .toList();
    }

    public boolean flag() {
        return fact != null && fact.kind() == Fact.Kind.FLAG;
    }

    public String valueLabel() {
        return fact == null || fact.unit().isEmpty() ? "Value" : "Value, " + TextFormat.unit(fact);
    }

    public String valueHint() {
        return fact == null
                ? ""
                : "%s to %s"
                        .formatted(TextFormat.plain(fact.least()), TextFormat.plain(fact.most()));
    }

    public String keeper(Tree tree) {
        return keepers.getOrDefault(tree.keeperId(), "");
    }

    public long ready() {
        return lines.stream().filter(AssignLine::ready).count();
    }

    public long held() {
        return lines.stream().filter(AssignLine::waives).count();
    }

    /** How many can be given the step by no waiver. */
    public long shut() {
        return lines.size() - ready() - held();
    }

    public boolean anyOpen() {
        return lines.stream().anyMatch(AssignLine::open);
    }

    /** The address of the cards of the chosen trees. */
    public String cards() {
        return "/courses/%d/cards?%s"
                .formatted(
                        course.id(),
                        chosen.stream()
                                .map(tree -> "tree=" + tree.id())
                                .collect(Collectors.joining("&")));
    }
}
