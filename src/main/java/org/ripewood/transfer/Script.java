package org.ripewood.transfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is to be entered, in order, while the files are being read. */
final class Script {

    private final Codes codes;
    private final List<ImportStep> deeds = new ArrayList<>();

    Script(Codes codes) {
        this.codes = codes;
    }

    Codes codes() {
        return codes;
    }

    /** The person an entry names as the one who did it. */
    Ref by(Entry entry) {
        return person(entry, "by");
    }

    Ref person(Entry entry, String key) {
        return codes.mention(Ref.person(entry.text(key)), entry.place(), key);
    }

    /** Ends reading an entry; what has a fault is not entered. */
    void add(Entry entry, LocalDate day, ImportStep.Task task) {
        entry.close();
        if (entry.sound()) {
            deeds.add(new ImportStep(entry.place(), day, task));
        }
    }

    /** Adds what was read from one line of an entry. */
    void add(Place place, LocalDate day, ImportStep.Task task) {
        deeds.add(new ImportStep(place, day, task));
    }

    /** Takes over another script's deeds, earlier days first; on one day as they were written. */
    void addByDay(Script other) {
        other.deeds.stream().sorted(Comparator.comparing(ImportStep::day)).forEach(deeds::add);
    }

    List<ImportStep> deeds() {
        return List.copyOf(deeds);
    }
}
