package org.ripewood.web.trees;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.DecimalText;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.records.NewSeries;
import org.ripewood.records.Question;

/** The rows of the bench form as a series; remembers which row each value came from. */
final class BenchSeries {

    /** No more decimals than a calliper shows; what is below nothing is refused as too small. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,6}(\\.\\d{1,2})?");

    private static final Pattern ID = Pattern.compile("\\d{1,18}");

    private final MeasureForm form;
    private final List<NewSeries.Diameter> diameters = new ArrayList<>();
    private final List<NewSeries.Opening> wounds = new ArrayList<>();
    private final List<NewSeries.Whole> whole = new ArrayList<>();
    private final Map<String, String> rows = new TreeMap<>();
    private final List<Fault> faults = new ArrayList<>();

    BenchSeries(MeasureForm form) {
        this.form = form;
        rows(form.mark()).forEach(this::mark);
        blankRows();
        rows(form.wound()).forEach(this::wound);
        rows(form.whole()).forEach(this::whole);
    }

    /** What could not be read; the series is made of the rest. */
    List<Fault> faults() {
        return faults;
    }

    NewSeries series() {
        return new NewSeries(
                form.observedOn(), form.note(), diameters, wounds, whole, form.confirmed());
    }

    /** The same problem, told at the rows of the form. */
    Problem atRows(Problem problem) {
        return new Problem(
                problem.status(),
                problem.kind(),
                problem.title(),
                problem.detail(),
                problem.maybe(),
                problem.faults().stream()
                        .map(fault -> new Fault(row(fault.field()), fault.message()))
                        .toList());
    }

    Question atRow(Question question) {
        return new Question(question.key(), row(question.field()), question.question());
    }

    private String row(String field) {
        return rows.getOrDefault(field, field);
    }

    private void mark(String height, String typed) {
        var field = "mark." + height;
        var heightMm = number(field, height);
        var diameterMm = number(field, typed);
        if (heightMm != null && diameterMm != null) {
            diameter(heightMm, field, diameterMm, field);
        }
    }

    /** A height alone, or a diameter alone, was begun and not finished. */
    private void blankRows() {
        var heights = rows(form.newHeight());
        var diameterTexts = rows(form.newDiameter());
        var begun = new TreeSet<>(heights.keySet());
        begun.addAll(diameterTexts.keySet());
        for (var row : begun) {
            var heightField = "newHeight." + row;
            var diameterField = "newDiameter." + row;
            var heightMm = number(heightField, heights.get(row));
            var diameterMm = number(diameterField, diameterTexts.get(row));
            if (heightMm != null && diameterMm != null) {
                diameter(heightMm, heightField, diameterMm, diameterField);
            }
        }
    }

    private void diameter(
            double heightMm, String heightField, double diameterMm, String diameterField) {
        var at = "diameters[%d]".formatted(diameters.size());
        rows.put(at + ".heightMm", heightField);
        rows.put(at + ".diameterMm", diameterField);
        diameters.add(new NewSeries.Diameter(heightMm, diameterMm));
    }

    private void wound(String id, String typed) {
        var field = "wound." + id;
        if (!ID.matcher(id).matches()) {
            faults.add(new Fault(field, "there is no such wound"));
            return;
        }
        var openMm = number(field, typed);
        if (openMm != null) {
            var at = "wounds[%d]".formatted(wounds.size());
            rows.put(at + ".woundId", field);
            rows.put(at + ".openMm", field);
            wounds.add(new NewSeries.Opening(Long.valueOf(id), openMm));
        }
    }

    private void whole(String fact, String typed) {
        var field = "whole." + fact;
        var at = "whole[%d]".formatted(whole.size());
        rows.put(at + ".fact", field);
        rows.put(at + ".value", field);
        whole.add(new NewSeries.Whole(fact, DecimalText.withPoint(typed.strip())));
    }

    private @Nullable Double number(String field, @Nullable String typed) {
        var text = typed == null ? "" : DecimalText.withPoint(typed.strip());
        if (NUMBER.matcher(text).matches()) {
            return Double.valueOf(text);
        }
        faults.add(
                new Fault(
                        field,
                        typed == null
                                ? "expected a number such as 12.5, found nothing"
                                : "expected a number such as 12.5, found “%s”%s"
                                        .formatted(
                                                shortened(typed.strip()),
                                                DecimalText.maybe(typed.strip()))));
        return null;
    }

    private static String shortened(String typed) {
        return typed.length() <= 40 ? typed : typed.substring(0, 40) + "…";
    }

    private static Map<String, String> rows(@Nullable Map<String, String> sent) {
        return sent == null ? Map.of() : new TreeMap<>(sent);
    }
}
