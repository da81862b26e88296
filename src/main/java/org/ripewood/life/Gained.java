package org.ripewood.life;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.course.Stage;
import org.ripewood.life.LifeEntry.Kind;
import org.ripewood.steps.Wording;

/**
 * What a tree gained in a year, from its entries alone: what was measured twice, closed, signed off
 * or passed. Nothing is reckoned from other years or other trees, but that a wound read as closed
 * is told by the reading before, whenever that was.
 */
final class Gained {

    /** More steps than these are counted, not named. */
    private static final int MOST_STEPS = 5;

    private final int year;
    private final List<LifeEntry> oldestFirst;
    private final List<Stage> stages;
    private final List<String> sentences = new ArrayList<>();
    private boolean measuredTwice;

    private Gained(int year, List<LifeEntry> entries, List<Stage> stages) {
        this.year = year;
        this.oldestFirst = entries.stream().sorted(Comparator.comparing(LifeEntry::on)).toList();
        this.stages = stages;
    }

    /**
     * @param entries all of the tree, of any year
     * @param stages in their order
     */
    static Life.Gains in(int year, List<LifeEntry> entries, List<Stage> stages) {
        return new Gained(year, entries, stages).tell();
    }

    private Life.Gains tell() {
        trunk();
        byWound().values().forEach(this::wound);
        steps();
        stage();
        return new Life.Gains(year, measuredTwice, sentences);
    }

    private List<LifeEntry> ofYear(Kind kind) {
        return oldestFirst.stream()
                .filter(entry -> entry.kind() == kind && isOfYear(entry))
                .toList();
    }

    private boolean isOfYear(LifeEntry entry) {
        return entry.on().getYear() == year;
    }

    private void trunk() {
        var measured = ofYear(Kind.TRUNK);
        if (!onTwoDays(measured)) {
            return;
        }
        measuredTwice = true;
        var first = measured.get(0);
        var last = measured.get(measured.size() - 1);
        var days = days(first.on(), last.on());
        sentences.add(
                mm(last) > mm(first)
                        ? "%s: grew from %s to %s %s."
                                .formatted(first.title(), first.detail(), last.detail(), days)
                        : "%s: no growth measured, %s and %s %s."
                                .formatted(first.title(), first.detail(), last.detail(), days));
    }

    private Map<Long, List<LifeEntry>> byWound() {
        return oldestFirst.stream()
                .filter(entry -> entry.kind() == Kind.WOUND && entry.mm() != null)
                .filter(entry -> entry.id() != null)
                .collect(
                        Collectors.groupingBy(
                                LifeEntry::id, LinkedHashMap::new, Collectors.toList()));
    }

    private void wound(List<LifeEntry> looks) {
        var read = looks.stream().filter(this::isOfYear).toList();
        if (read.isEmpty()) {
            return;
        }
        boolean twice = onTwoDays(read);
        measuredTwice |= twice;
        var last = read.get(read.size() - 1);
        int place = looks.indexOf(last);
        var first = twice ? read.get(0) : place > 0 ? looks.get(place - 1) : last;
        if (mm(last) == 0 && mm(first) > 0) {
            sentences.add(
                    "Wound closed: %s, %s on %s, closed on %s."
                            .formatted(
                                    last.title(),
                                    LifeWords.mm(mm(first)),
                                    Wording.day(first.on()),
                                    Wording.day(last.on())));
        } else if (twice && mm(last) < mm(first)) {
            sentences.add(
                    "Wound closing: %s, from %s to %s %s."
                            .formatted(
                                    last.title(),
                                    LifeWords.mm(mm(first)),
                                    LifeWords.mm(mm(last)),
                                    days(first.on(), last.on())));
        }
    }

    private void steps() {
        var done = ofYear(Kind.STEP).stream().filter(LifeEntry::signedOff).toList();
        done.stream()
                .limit(MOST_STEPS)
                .forEach(
                        step ->
                                sentences.add(
                                        "Step signed off: %s, done on %s."
                                                .formatted(step.title(), Wording.day(step.on()))));
        if (done.size() > MOST_STEPS) {
            sentences.add(
                    "%s signed off besides, the last done on %s."
                            .formatted(
                                    Wording.counted(done.size() - MOST_STEPS, "step"),
                                    Wording.day(done.get(done.size() - 1).on())));
        }
    }

    /** A stage said this year that lies behind the one said before. */
    private void stage() {
        var said = oldestFirst.stream().filter(entry -> entry.kind() == Kind.STAGE).toList();
        for (int i = 1; i < said.size(); i++) {
            var before = said.get(i - 1);
            var now = said.get(i);
            if (isOfYear(now) && order(now) > order(before)) {
                sentences.add(
                        "Stage passed: from “%s” to “%s” on %s."
                                .formatted(before.title(), now.title(), Wording.day(now.on())));
            }
        }
    }

    private int order(LifeEntry entry) {
        return stages.stream()
                .filter(stage -> stage.title().equals(entry.title()))
                .mapToInt(Stage::order)
                .findFirst()
                .orElse(0);
    }

    private static boolean onTwoDays(List<LifeEntry> entries) {
        return entries.size() > 1
                && !entries.get(0).on().equals(entries.get(entries.size() - 1).on());
    }

    private static double mm(LifeEntry entry) {
        var mm = entry.mm();
        return mm == null ? 0 : mm;
    }

    private static String days(LocalDate from, LocalDate to) {
        return "between %s and %s".formatted(Wording.day(from), Wording.day(to));
    }
}
