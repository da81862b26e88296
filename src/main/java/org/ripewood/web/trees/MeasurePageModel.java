package org.ripewood.web.trees;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.records.Observation;
import org.ripewood.records.Question;
import org.ripewood.records.Wound;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.TextFormat;

/**
 * What the page for measuring at the bench shows.
 *
 * @param marks heights measured before, lowest first
 * @param wounds open ones, widest first
 * @param whole facts of the whole tree that are measured with a rule
 * @param questions about values that look odd, at the fields of the form
 */
record MeasurePageModel(
        Tree tree,
        List<Observation> marks,
        List<Wound> wounds,
        List<Length> whole,
        List<Question> questions,
        FormState typed) {

    private static final int BLANK_ROWS = 4;

    /** A length of the tree as a whole, and what it was last. */
    record Length(String code, String title, String how, @Nullable Observation last) {

        public String field() {
            return "whole." + code;
        }
    }

    public List<Integer> blankRows() {
        return IntStream.rangeClosed(1, BLANK_ROWS).boxed().toList();
    }

    public String field(Observation mark) {
        return "mark." + height(mark);
    }

    public String field(Wound wound) {
        return "wound." + wound.id();
    }

    public String newHeight(int row) {
        return "newHeight." + row;
    }

    public String newDiameter(int row) {
        return "newDiameter." + row;
    }

    public String markLabel(Observation mark) {
        return height(mark) + " mm up";
    }

    public String lastHint(Observation mark) {
        return "Last %s, %s".formatted(TextFormat.text(mark), TextFormat.day(mark.observedOn()));
    }

    public String lastHint(Wound wound) {
        var look = wound.closure().latest();
        return "%s %s mm, %s"
                .formatted(
                        wound.readings().isEmpty() ? "Made" : "Last",
                        TextFormat.plain(look.openMm()),
                        TextFormat.day(look.on()));
    }

    public String lastHint(Length length) {
        var last = length.last();
        return last == null ? "Never measured" : lastHint(last);
    }

    public String height(Observation mark) {
        var height = mark.heightMm();
        return height == null ? "" : TextFormat.plain(height);
    }

    /** The questions about the value of a field. */
    public List<Question> asked(String field) {
        return questions.stream().filter(question -> question.field().equals(field)).toList();
    }

    /** Questions said yes to that are not asked again, and would be without their keys. */
    public List<String> confirmedBefore() {
        Set<String> asked = questions.stream().map(Question::key).collect(Collectors.toSet());
        return typed.values().getOrDefault("confirmed", List.of()).stream()
                .filter(key -> !asked.contains(key))
                .distinct()
                .toList();
    }
}
