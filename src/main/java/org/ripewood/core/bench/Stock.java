package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is left of a day's time, tools and materials while work is given out. */
final class Stock {

    /** Amounts are sums of doubles; so much too little is not short. */
    private static final double SLACK = 1e-9;

    private final DayLimits limits;
    private final Map<String, Integer> studentLeft = new HashMap<>();
    private final Map<String, Integer> toolLeft = new HashMap<>();
    private final Map<String, Double> materialUsed = new HashMap<>();
    private int instructorLeft;

    Stock(DayLimits limits) {
        this.limits = limits;
        this.instructorLeft = limits.instructorMinutes();
    }

    int instructorLeft() {
        return instructorLeft;
    }

    private int left(String student) {
        return studentLeft.getOrDefault(student, limits.minutesOf(student));
    }

    private int toolLeft(String tool) {
        return toolLeft.getOrDefault(tool, limits.toolMinutes(tool));
    }

    private double materialLeft(String material) {
        return limits.materials().getOrDefault(material, 0.0)
                - materialUsed.getOrDefault(material, 0.0);
    }

    boolean fits(String student, Candidate work) {
        return work.studentMinutes() <= left(student)
                && work.instructorMinutes() <= instructorLeft
                && work.tools().entrySet().stream()
                        .allMatch(use -> use.getValue() <= toolLeft(use.getKey()))
                && work.materials().entrySet().stream()
                        .allMatch(use -> use.getValue() <= materialLeft(use.getKey()) + SLACK);
    }

    void take(String student, Candidate work) {
        change(student, work, 1);
    }

    void giveBack(String student, Candidate work) {
        change(student, work, -1);
    }

    private void change(String student, Candidate work, int sign) {
        studentLeft.put(student, left(student) - sign * work.studentMinutes());
        instructorLeft -= sign * work.instructorMinutes();
        work.tools().forEach((tool, use) -> toolLeft.put(tool, toolLeft(tool) - sign * use));
        work.materials()
                .forEach((material, use) -> materialUsed.merge(material, sign * use, Double::sum));
    }

    /** Everything that there is too little of for a piece of work. */
    List<ChoiceReason.Against> whatIsShort(String student, Candidate work) {
        var reasons = new ArrayList<ChoiceReason.Against>();
        if (work.studentMinutes() > left(student)) {
            reasons.add(new ChoiceReason.StudentTime(work.studentMinutes(), left(student)));
        }
        if (work.instructorMinutes() > instructorLeft) {
            reasons.add(new ChoiceReason.InstructorTime(work.instructorMinutes(), instructorLeft));
        }
        new TreeMap<>(work.tools()).forEach((tool, use) -> addTool(tool, use, reasons));
        new TreeMap<>(work.materials())
                .forEach(
                        (material, use) -> {
                            double left = Math.max(0, materialLeft(material));
                            if (use > left + SLACK) {
                                reasons.add(new ChoiceReason.MaterialShort(material, use, left));
                            }
                        });
        return reasons;
    }

    private void addTool(String tool, int use, List<ChoiceReason.Against> reasons) {
        if (limits.tools().getOrDefault(tool, 0) == 0) {
            reasons.add(new ChoiceReason.ToolMissing(tool));
        } else if (use > toolLeft(tool)) {
            reasons.add(new ChoiceReason.ToolTaken(tool, use, toolLeft(tool)));
        }
    }
}
