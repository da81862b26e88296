package org.ripewood.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.JudgementCase;
import org.ripewood.standing.ReasonText;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TreeOnDay;

/** Holds what the rules say of a case against what its teacher says. */
final class CaseComparison {

    private final JudgementCase told;
    private final TreeOnDay tree;
    private final Standing standing;
    private final List<ReasonView> against;
    private final List<String> differences = new ArrayList<>();

    CaseComparison(JudgementCase told, TreeOnDay tree) {
        this.told = told;
        this.tree = tree;
        this.standing = tree.find(told.technique()).orElseThrow();
        this.against =
                new ReasonText(tree.content(), tree.subject().traits())
                        .tell(standing).stream().filter(reason -> !reason.met()).toList();
    }

    CaseOutcome outcome() {
        compareVerdict();
        compareReasons();
        compareWaivable();
        compareStage();
        return new CaseOutcome(
                told.code(),
                told.title(),
                told.file(),
                told.line(),
                tree.content().titleOf(told.technique()),
                told.verdicts().stream().sorted().toList(),
                standing.verdict(),
                against.stream().map(CaseComparison::sentence).toList(),
                differences,
                told.why());
    }

    private static String sentence(ReasonView reason) {
        return "%s (%s%s)"
                .formatted(
                        reason.sentence(),
                        reason.key(),
                        reason.waivable() ? "" : ", never let pass");
    }

    private void compareVerdict() {
        if (!told.verdicts().contains(standing.verdict())) {
            var expected =
                    told.verdicts().stream()
                            .sorted()
                            .map(Verdict::name)
                            .collect(Collectors.joining(" or "));
            differences.add("expected %s; found %s".formatted(expected, standing.verdict()));
        }
    }

    private void compareReasons() {
        // Where READY is accepted and found, nothing has to be against it.
        var free = standing.verdict() == Verdict.READY && told.verdicts().contains(Verdict.READY);
        for (var wanted : told.against()) {
            if (!free && !isAgainst(wanted)) {
                differences.add(
                        "expected against it: %s; found %s"
                                .formatted(String.join(" or ", wanted), keys()));
            }
        }
        for (var unwanted : told.notAgainst()) {
            if (isAgainst(unwanted)) {
                differences.add(
                        "expected not against it: %s; found %s"
                                .formatted(String.join(" or ", unwanted), keys()));
            }
        }
    }

    private String keys() {
        return against.isEmpty()
                ? "nothing"
                : against.stream().map(ReasonView::key).collect(Collectors.joining(", "));
    }

    private boolean isAgainst(Set<String> names) {
        return against.stream()
                .anyMatch(reason -> names.stream().anyMatch(name -> is(reason, name)));
    }

    /**
     * A key is made of codes: of the fact and the comparison, or of the technique to come first.
     */
    private static boolean is(ReasonView reason, String name) {
        return Arrays.asList(reason.key().split("[^A-Za-z0-9_]+")).contains(name);
    }

    private void compareWaivable() {
        var wanted = told.waivable();
        if (wanted == null) {
            return;
        }
        var waivable =
                standing.verdict() != Verdict.DONE
                        && standing.verdict() != Verdict.NOT_NEEDED
                        && against.stream().allMatch(ReasonView::waivable);
        if (wanted != waivable) {
            differences.add(
                    wanted
                            ? "expected that an instructor may let it pass; found that nobody may"
                            : "expected that nobody may let it pass; found that an instructor may");
        }
    }

    private void compareStage() {
        var stage = tree.stage().code();
        if (!told.stages().isEmpty() && !told.stages().contains(stage)) {
            var expected = told.stages().stream().sorted().collect(Collectors.joining(" or "));
            differences.add("expected in the stage %s; found %s".formatted(expected, stage));
        }
    }
}
