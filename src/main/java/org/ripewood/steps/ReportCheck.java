package org.ripewood.steps;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Technique;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** Whether a report states what its technique asks for; what it does not ask may be left out. */
final class ReportCheck {

    private final Technique technique;
    private final NewReport report;
    private final List<Fault> faults = new ArrayList<>();

    private ReportCheck(Technique technique, NewReport report) {
        this.technique = technique;
        this.report = report;
    }

    /**
     * Goes on only with a report that can be kept.
     *
     * @throws Refused 400 with every fault
     */
    static void check(Technique technique, NewReport report, StepEntity step, LocalDate today) {
        var check = new ReportCheck(technique, report);
        check.day(step.assignedOn, today);
        check.shares();
        check.wound();
        check.container();
        check.measures();
        if (!check.faults.isEmpty()) {
            throw Refused.invalid(check.faults);
        }
    }

    private void day(LocalDate assignedOn, LocalDate today) {
        var doneOn = report.doneOn();
        if (doneOn.isAfter(today) || doneOn.isBefore(assignedOn)) {
            fault(
                    "doneOn",
                    "Expected a day from %s, when it was assigned, to today, %s; found %s."
                            .formatted(assignedOn, today, doneOn));
        }
    }

    private void shares() {
        share("foliagePercent", report.foliagePercent(), Technique.Ask.FOLIAGE_SHARE, "foliage");
        share("rootPercent", report.rootPercent(), Technique.Ask.ROOT_SHARE, "roots");
    }

    private void share(String field, @Nullable Double percent, Technique.Ask ask, String ofWhat) {
        if (percent == null) {
            if (asks(ask)) {
                fault(field, "State how much of the %s was taken, in per cent.".formatted(ofWhat));
            }
        } else if (!(percent >= 0 && percent <= 100)) {
            fault(field, "Expected 0 to 100 per cent, found %s.".formatted(percent));
        }
    }

    /** Whoever states a part of a wound states all of it. */
    private void wound() {
        var place = report.woundPlace();
        var noPlace = place == null || place.isBlank();
        var width = report.woundWidthMm();
        var length = report.woundLengthMm();
        if (!asks(Technique.Ask.WOUND) && noPlace && width == null && length == null) {
            return;
        }
        if (noPlace) {
            fault("woundPlace", "State where the wound is.");
        }
        size("woundWidthMm", width, "width across the trunk or branch");
        size("woundLengthMm", length, "length along it");
    }

    private void size(String field, @Nullable Double millimetres, String what) {
        if (millimetres == null) {
            fault(field, "State the wound's %s in mm.".formatted(what));
        } else if (!(millimetres >= 1 && millimetres <= 500)) {
            fault(field, "Expected 1 to 500 mm, found %s.".formatted(millimetres));
        }
    }

    private void container() {
        var kind = report.containerKind();
        var noKind = kind == null || kind.isBlank();
        var partly = report.containerDescription() != null || report.containerLitres() != null;
        if (noKind && (asks(Technique.Ask.CONTAINER) || partly)) {
            fault(
                    "containerKind",
                    "State what the tree stands in now: ground, nursery, training or show.");
        }
    }

    private void measures() {
        var asked = asks(Technique.Ask.MEASURES);
        if (asked && report.evidence().chars().noneMatch(Character::isDigit)) {
            fault("evidence", "State what was measured or counted, with its numbers.");
        }
    }

    private boolean asks(Technique.Ask ask) {
        return technique.asks().contains(ask);
    }

    private void fault(String field, String message) {
        faults.add(new Fault(field, message));
    }
}
