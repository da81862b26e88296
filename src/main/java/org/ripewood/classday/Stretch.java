package org.ripewood.classday;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.bench.WorkPhase;

/**
 * What stands as one on a timetable: a phase, or the look before a cut and the cut right after it.
 *
 * @param slot the first of it
 * @param cuts whether something is cut in it
 */
record Stretch(DayTimetable.Slot slot, boolean cuts, int toMinute) {

    int fromMinute() {
        return slot.fromMinute();
    }

    static List<Stretch> of(List<DayTimetable.Slot> slots) {
        var stretches = new ArrayList<Stretch>();
        for (var slot : slots) {
            if (!slots.stream().anyMatch(look -> leadsTo(look, slot))) {
                var cut = slots.stream().filter(next -> leadsTo(slot, next)).findFirst();
                stretches.add(
                        new Stretch(
                                slot,
                                slot.cuts() || cut.isPresent(),
                                cut.map(DayTimetable.Slot::toMinute).orElse(slot.toMinute())));
            }
        }
        return stretches;
    }

    private static boolean leadsTo(DayTimetable.Slot look, DayTimetable.Slot cut) {
        return look.kind() == WorkPhase.Kind.INSPECTION
                && cut.kind() == WorkPhase.Kind.HANDS_ON
                && cut.cuts()
                && look.treeId() == cut.treeId()
                && look.technique().equals(cut.technique())
                && look.phase() + 1 == cut.phase()
                && look.toMinute() == cut.fromMinute();
    }
}
