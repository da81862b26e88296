package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;

/** Reads {@code sessions.yaml}: class dates, and who comes with which tree. */
final class SessionsFile {

    private record Comes(Ref tree, String bench, Place place) {}

    private final Rooms rooms;
    private final Script script;

    SessionsFile(Rooms rooms, Script script) {
        this.rooms = rooms;
        this.script = script;
    }

    void read(Entry file, Page page) {
        for (var entry : file.entries("sessions")) {
            readSession(entry, page);
        }
        file.close();
    }

    private void readSession(Entry entry, Page page) {
        var course = mention(entry, "course", Ref.course(entry.text("course")));
        var by = script.by(entry);
        var day = entry.day("day");
        var starts = entry.time("startsAt");
        var ends = entry.time("endsAt");
        var lesson = entry.textOrNull("lesson");
        var place = entry.text("place");
        var calledOff = entry.textOrNull("calledOffBecause");
        var instructors = new ArrayList<Ref>();
        for (var cell : entry.texts("instructors")) {
            var at = Place.of(page.file(), cell.line(), "");
            instructors.add(script.codes().mention(Ref.person(cell.text()), at, ""));
        }
        var coming = coming(entry);
        script.add(
                entry,
                page.loadingDay(),
                register -> {
                    var input =
                            new NewSession(
                                    register.id(course),
                                    day,
                                    starts,
                                    ends,
                                    lesson,
                                    place,
                                    instructors.stream().map(register::id).toList());
                    var set = rooms.sessions.set(register.actor(by), rooms.checked(input));
                    register.put(session(entry), set.id());
                });
        for (var comes : coming) {
            script.add(
                    comes.place(),
                    page.loadingDay(),
                    register -> enrol(register, by, session(entry), comes));
        }
        if (calledOff != null) {
            script.add(
                    entry.place(),
                    page.loadingDay(),
                    register -> cancel(register, by, session(entry), calledOff));
        }
    }

    private void cancel(ImportedIds register, Ref by, Ref session, String because) {
        var actor = register.actor(by);
        var id = register.id(session);
        rooms.sessions.cancel(
                actor,
                id,
                rooms.sessions.get(actor, id).version(),
                rooms.checked(new NewCancellation(because)));
    }

    private void enrol(ImportedIds register, Ref by, Ref session, Comes comes) {
        var actor = register.actor(by);
        var treeId = register.id(comes.tree());
        var keeperId = rooms.trees.get(actor, treeId).keeperId();
        var input = rooms.checked(new NewEnrolment(keeperId, treeId, comes.bench()));
        rooms.sessions.enrol(actor, register.id(session), input);
    }

    private List<Comes> coming(Entry session) {
        var coming = new ArrayList<Comes>();
        for (var entry : session.entries("trees")) {
            var tree = mention(entry, "tree", Ref.tree(entry.text("tree")));
            var bench = entry.text("bench");
            entry.close();
            if (entry.sound()) {
                coming.add(new Comes(tree, bench, entry.place()));
            }
        }
        return coming;
    }

    /** Sessions have no code of their own; nothing speaks of one but what stands inside it. */
    private static Ref session(Entry entry) {
        return new Ref(Ref.Kind.SESSION, "line " + entry.place().line());
    }

    private Ref mention(Entry entry, String key, Ref ref) {
        return script.codes().mention(ref, entry.place(), key);
    }
}
