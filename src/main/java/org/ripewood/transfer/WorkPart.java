package org.ripewood.transfer;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.NewWord;
import org.ripewood.aftercare.Saying;
import org.ripewood.core.progress.Work;
import org.ripewood.course.Technique;
import org.ripewood.platform.problems.Suggestion;

/** Reads the parts {@code works} and {@code foundDone} of a tree's file. */
final class WorkPart {

    private static final Map<String, Saying> SAYINGS =
            Map.of("done", Saying.DONE, "not_needed", Saying.NOT_NEEDED);

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
        var care = entry.entries("care");
        var done = tree.part(Ref.Kind.WORK, "line " + entry.place().line());
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
                    register.put(
                            done,
                            rooms.worksDone
                                    .record(
                                            register.actor(by),
                                            register.id(tree),
                                            work,
                                            technique.startsClock(),
                                            note)
                                    .id());
                });
        var times = new HashMap<String, Integer>();
        for (var word : care) {
            readWord(word, done, day, times);
        }
    }

    /**
     * What was said of a task of the work's aftercare.
     *
     * @param times how often each task has come so far
     */
    private void readWord(Entry entry, Ref work, LocalDate workedOn, Map<String, Integer> times) {
        var by = script.by(entry);
        var day = entry.day("day");
        var task = entry.text("task");
        var did = entry.text("did");
        var what = SAYINGS.get(did);
        if (what == null) {
            entry.fault("did", "did must be done or not_needed, found \"%s\"".formatted(did));
        }
        if (day.isBefore(workedOn)) {
            entry.fault("day", "%s lies before the work, %s".formatted(day, workedOn));
        }
        int time = times.merge(task, 1, Integer::sum);
        var word = new NewWord(day, entry.textOrNull("note"), null);
        script.add(
                entry,
                day,
                register -> {
                    if (what != null) {
                        rooms.aftercare.say(
                                register.actor(by),
                                register.id(tree),
                                "%d-%s-%d".formatted(register.id(work), task, time),
                                what,
                                rooms.checked(word));
                    }
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
                        rooms.assigner.noteFoundDone(
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
