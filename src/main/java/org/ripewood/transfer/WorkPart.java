package org.ripewood.transfer;

import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Work;
import org.ripewood.course.Technique;
import org.ripewood.platform.Suggestion;

/** Reads the parts {@code works} and {@code foundDone} of a tree's file. */
final class WorkPart {

    private final Rooms rooms;
    private final Script script;
    private final Ref tree;

    WorkPart(Rooms rooms, Script script, Ref tree) {
        this.rooms = rooms;
        this.script = script;
        this.tree = tree;
    }

    /** Work done before the school kept steps: its load and doses count, it signs nothing off. */
    void readWork(Entry entry) {
        var by = script.by(entry);
        var day = entry.day("day");
        var technique = technique(rooms, entry);
        var foliage = share(entry, "foliagePercent");
        var root = share(entry, "rootPercent");
        var note = entry.textOrNull("note");
        script.add(
                entry,
                day,
                register -> {
                    if (technique == null) {
                        return;
                    }
                    var rule = technique.rule();
                    var work =
                            new Work(
                                    rule.code(),
                                    day,
                                    rule.stress(),
                                    rule.recoveryDays(),
                                    foliage,
                                    root);
                    rooms.trees.recordWork(
                            register.actor(by),
                            register.id(tree),
                            work,
                            technique.startsClock(),
                            note);
                });
    }

    void readFoundDone(Entry entry) {
        var by = script.by(entry);
        var day = entry.day("day");
        var technique = technique(rooms, entry);
        var note = entry.textOrNull("note");
        script.add(
                entry,
                day,
                register -> {
                    if (technique != null) {
                        rooms.standings.noteFoundDone(
                                register.actor(by), register.id(tree), technique.code(), day, note);
                    }
                });
    }

    /** The technique an entry names; null with the fault told when there is none of that code. */
    static @Nullable Technique technique(Rooms rooms, Entry entry) {
        var code = entry.text("technique");
        var techniques = rooms.content.inForce().techniques();
        var technique = techniques.get(code);
        if (technique == null) {
            entry.fault(
                    "technique",
                    "there is no technique %s.%s"
                            .formatted(code, Suggestion.maybe(techniques.keySet(), code)));
        }
        return technique;
    }

    private static double share(Entry entry, String key) {
        var percent = entry.numberOrNull(key);
        if (percent == null) {
            return 0;
        }
        if (!(percent >= 0 && percent <= 100)) {
            entry.fault(key, "%s must lie between 0 and 100, found %s".formatted(key, percent));
            return 0;
        }
        return percent / 100;
    }
}
