package org.ripewood.transfer;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.ripewood.platform.Actor;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.NewReport;

/** Reads the part {@code steps} of a tree's file: each step with all that happened to it. */
final class StepsPart {

    /** What may happen to a step. */
    private static final String DEEDS = "assign, report, send_back, sign_off or withdraw";

    /** Key of the reason that a season is closed. */
    private static final String SEASON = "season";

    private final Rooms rooms;
    private final Script script;
    private final Ref tree;

    StepsPart(Rooms rooms, Script script, Ref tree) {
        this.rooms = rooms;
        this.script = script;
        this.tree = tree;
    }

    void read(Entry entry) {
        var technique = WorkPart.technique(rooms, entry);
        var events = entry.entries("events");
        entry.close();
        if (technique == null || !entry.sound()) {
            return;
        }
        var step = tree.part(Ref.Kind.STEP, "line " + entry.place().line());
        for (var event : events) {
            readEvent(event, step, technique.code());
        }
    }

    private void readEvent(Entry event, Ref step, String technique) {
        var did = event.text("did");
        switch (did) {
            case "assign" -> readAssign(event, step, technique);
            case "report" -> readReport(event, step);
            case "send_back", "sign_off", "withdraw" -> readJudgement(event, step, did);
            default -> event.fault("did", "did must be %s, found \"%s\"".formatted(DEEDS, did));
        }
    }

    private void readAssign(Entry event, Ref step, String technique) {
        var by = script.by(event);
        var day = event.day("day");
        var input =
                new NewAssignment(
                        technique,
                        event.dayOrNull("from"),
                        event.dayOrNull("until"),
                        event.textOrNull("note"),
                        texts(event.table("waivers")));
        script.add(
                event,
                day,
                register -> {
                    var actor = register.actor(by);
                    var id = register.id(tree);
                    var asked = withoutIdleSeason(actor, id, day, input);
                    register.put(step, rooms.assigner.assign(actor, id, rooms.checked(asked)));
                });
    }

    /**
     * An offset may fall into any season, so that a waiver of it is needed on one day of loading
     * and belongs to nothing on another; there it is left out.
     */
    private NewAssignment withoutIdleSeason(
            Actor actor, long treeId, LocalDate day, NewAssignment asked) {
        var waivers = asked.waivers();
        if (waivers == null || !waivers.containsKey(SEASON)) {
            return asked;
        }
        var closed =
                rooms.standings.of(actor, treeId, day).techniques().stream()
                        .filter(standing -> standing.technique().equals(asked.technique()))
                        .flatMap(standing -> standing.against().stream())
                        .anyMatch(reason -> reason.key().equals(SEASON));
        if (closed) {
            return asked;
        }
        var kept = new HashMap<>(waivers);
        kept.remove(SEASON);
        return new NewAssignment(
                asked.technique(), asked.from(), asked.until(), asked.note(), kept);
    }

    private void readReport(Entry event, Ref step) {
        var by = script.by(event);
        var day = event.day("day");
        var input =
                new NewReport(
                        event.day("doneOn"),
                        event.text("evidence"),
                        event.numberOrNull("foliagePercent"),
                        event.numberOrNull("rootPercent"),
                        event.textOrNull("woundPlace"),
                        event.numberOrNull("woundWidthMm"),
                        event.numberOrNull("woundLengthMm"),
                        event.textOrNull("containerKind"),
                        event.textOrNull("containerDescription"),
                        event.numberOrNull("containerLitres"));
        script.add(
                event,
                day,
                register -> {
                    var known = register.take(step);
                    register.put(
                            step,
                            rooms.reports.report(
                                    register.actor(by),
                                    known.id(),
                                    known.version(),
                                    rooms.checked(input)));
                });
    }

    private void readJudgement(Entry event, Ref step, String did) {
        var by = script.by(event);
        var day = event.day("day");
        var note = did.equals("sign_off") ? event.textOrNull("note") : event.text("note");
        var words = note == null ? "" : note;
        script.add(
                event,
                day,
                register -> {
                    var actor = register.actor(by);
                    var known = register.take(step);
                    var id = known.id();
                    var version = known.version();
                    register.put(
                            step,
                            switch (did) {
                                case "sign_off" -> rooms.signOffs.signOff(actor, id, version, note);
                                case "send_back" ->
                                        rooms.signOffs.sendBack(actor, id, version, words);
                                default -> rooms.signOffs.withdraw(actor, id, version, words);
                            });
                });
    }

    private static Map<String, String> texts(Map<String, Cell> table) {
        var texts = new HashMap<String, String>();
        table.forEach((key, cell) -> texts.put(key, cell.text()));
        return texts;
    }
}
