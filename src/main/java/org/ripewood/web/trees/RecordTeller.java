package org.ripewood.web.trees;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.Content;
import org.ripewood.course.Stage;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.standing.NewEarlierWork;
import org.ripewood.steps.Wording;

/**
 * The sentence that says what a form of a tree's record recorded, its numbers spelt as they were
 * typed.
 */
final class RecordTeller {

    /** Values told one by one; more are counted. */
    private static final int TOLD = 6;

    private static final Pattern ZERO = Pattern.compile("[+-]?0+([.,]0+)?");

    private final Content content;

    RecordTeller(Content content) {
        this.content = content;
    }

    /**
     * One observation, or a correction of one.
     *
     * @param height on the trunk as it was typed; null or empty for none
     */
    String observation(NewObservation seen, @Nullable String height) {
        var typed = seen.value().strip();
        var found = Fact.find(seen.fact().strip());
        if (found.isEmpty()) {
            return "Recorded %s.".formatted(typed);
        }
        var fact = found.get();
        if (fact == Fact.TRAINING_STAGE) {
            return "Recorded: the tree is in the stage “%s”.".formatted(stage(typed));
        }
        return "%s “%s”: %s%s.%s"
                .formatted(
                        seen.supersedes() == null ? "Recorded" : "Corrected",
                        content.text(fact).title(),
                        value(fact, typed),
                        height == null || height.isBlank()
                                ? ""
                                : " at a height of %s mm".formatted(height.strip()),
                        fact == Fact.WOUND_OPEN_MM && ZERO.matcher(typed).matches()
                                ? " The wound is closed."
                                : "");
    }

    private String stage(String code) {
        return content.stages().stream()
                .filter(stage -> stage.code().equalsIgnoreCase(code))
                .map(Stage::title)
                .findFirst()
                .orElse(code);
    }

    private static String value(Fact fact, String typed) {
        return fact.kind() == Fact.Kind.NUMBER ? Wording.withUnit(fact, typed) : typed;
    }

    /** All that was measured in one go. */
    String series(MeasureForm form) {
        var values = new ArrayList<String>();
        rows(form.mark()).forEach((height, typed) -> values.add(trunk(height, typed)));
        var heights = rows(form.newHeight());
        rows(form.newDiameter())
                .forEach((row, typed) -> values.add(trunk(heights.getOrDefault(row, ""), typed)));
        rows(form.wound())
                .forEach((id, typed) -> values.add("a wound %s mm open".formatted(typed)));
        rows(form.whole()).forEach((code, typed) -> values.add(whole(code, typed)));
        return values.size() == 1
                ? "Recorded %s.".formatted(values.get(0))
                : "Recorded %d values: %s.".formatted(values.size(), told(values));
    }

    private static String trunk(String height, String typed) {
        return "the trunk at %s mm: %s mm".formatted(height, typed);
    }

    private String whole(String code, String typed) {
        return Fact.find(code)
                .map(fact -> "“%s”: %s".formatted(content.text(fact).title(), value(fact, typed)))
                .orElse(typed);
    }

    private static String told(List<String> values) {
        if (values.size() <= TOLD) {
            return Wording.list(values, "and");
        }
        var first = String.join(", ", values.subList(0, TOLD));
        return "%s and %d more".formatted(first, values.size() - TOLD);
    }

    private static Map<String, String> rows(@Nullable Map<String, String> sent) {
        var rows = new TreeMap<String, String>();
        Objects.requireNonNullElse(sent, Map.<String, String>of())
                .forEach((key, typed) -> rows.put(key.strip(), typed.strip()));
        return rows;
    }

    /**
     * A new wound.
     *
     * @param width as it was typed
     */
    static String wound(NewWound wound, String width) {
        return "Entered the wound “%s”, %s mm wide%s."
                .formatted(
                        wound.place().strip(),
                        width.strip(),
                        wound.deadwoodByDesign() ? ", deadwood by design" : "");
    }

    static String branch(NewBranch branch) {
        return "Entered the branch “%s”.".formatted(branch.name().strip());
    }

    /**
     * A move to another container or into the ground.
     *
     * @param litres as they were typed; null or empty for none
     */
    static String container(NewContainer container, @Nullable String litres) {
        return "Entered: in %s%s since %s."
                .formatted(
                        container.kind().equals("ground")
                                ? "the ground"
                                : "a %s container".formatted(container.kind()),
                        litres == null || litres.isBlank()
                                ? ""
                                : " of %s litres".formatted(litres.strip()),
                        Wording.day(container.since()));
    }

    String work(NewEarlierWork work) {
        return "Entered “%s”, done on %s.%s"
                .formatted(
                        content.titleOf(work.technique()),
                        Wording.day(work.doneOn()),
                        Boolean.TRUE.equals(work.countsAsDone()) ? " It counts as done." : "");
    }
}
