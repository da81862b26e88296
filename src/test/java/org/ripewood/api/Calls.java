package org.ripewood.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.Pictures;
import org.ripewood.trees.Tree;

/** For every endpoint a call that somebody may make, on things made for it. */
final class Calls {

    private static final Set<String> DAY_WORDS = Set.of("wishes", "timetables", "timetable");

    /** The record of a tree with nothing seen on it. */
    static final String RECORD =
            """
            {"format": "ripewood-record", "formatVersion": 1, "contentRevision": "none",
             "exportedAt": "2026-02-20T10:00:00Z", "scope": "TREE", "named": true, "tables": [
              {"table": "person", "rows": [{"id": 1, "name": "From elsewhere"}]},
              {"table": "site", "rows": [{"id": 1, "name": "Terrace", "latitude": 48,
                "longitude": 11, "zone": "Europe/Berlin"}]},
              {"table": "tree", "rows": [{"id": 1, "label": "Maple", "species": "acer_palmatum",
                "keeperId": 1, "siteId": 1, "cameOn": "2020-01-01", "byId": 1,
                "recordedAt": "2020-01-01T10:00:00Z"}]}]}
            """;

    private final School school;

    Calls(School school) {
        this.school = school;
    }

    /** The call, on fresh things of the student where it writes. */
    Call of(Endpoint endpoint) {
        var words = List.of(endpoint.path().replaceFirst("^/(api/v1/?)?", "").split("/"));
        var last = words.get(words.size() - 1);
        return switch (words.get(0)) {
            case "steps" -> step(endpoint, last);
            case "trees" -> words.size() == 1 ? call(endpoint, tree()) : tree(endpoint, last);
            case "sessions" -> session(endpoint, words, last);
            case "courses" -> course(endpoint, words.size(), last);
            case "judgements" -> judgement(endpoint, last);
            case "decisions" -> at(endpoint, school.assignedStep().decisionId(), null, null);
            case "people", "students" -> person(endpoint, last);
            case "school" -> schoolName(endpoint);
            case "sample-course" -> sample(endpoint);
            case "sites" ->
                    words.size() == 1 || last.equals("new")
                            ? call(endpoint, site())
                            : site(endpoint, last);
            case "photos" -> photo(endpoint);
            case "stock" -> new StockCalls(school).of(endpoint, words);
            case "calendar" -> new Call(endpoint, "/calendar/" + school.calendarFile(), null, null);
            case "password" -> password(endpoint, last);
            case "account" ->
                    last.equals("end")
                            ? at(endpoint, ended(words.get(1)), null, fields())
                            : call(endpoint, front(last));
            case "lists" -> list(endpoint);
            case "backups" -> at(endpoint, null, null, null);
            case "record" -> call(endpoint, fields("text", RECORD));
            case "search" ->
                    new Call(endpoint, endpoint.path().replace("{kind}", "tree"), null, null);
            case "content", "lessons", "techniques", "species", "rubrics" ->
                    at(endpoint, null, null, null);
            case "help" ->
                    new Call(endpoint, endpoint.path().replace("{topic}", "teaching"), null, null);
            default -> call(endpoint, front(last));
        };
    }

    private long ended(String what) {
        return what.equals("sessions") ? school.sessionId() : school.tokenId();
    }

    /** A draft of the instructor's, or a signed judgement that waits for a second. */
    private Call judgement(Endpoint endpoint, String last) {
        var draft = school.draft();
        var found = last.startsWith("open") ? school.signed(draft) : draft;
        return at(
                endpoint,
                found.id(),
                found.version(),
                endpoint.api() ? judgement(4) : fields("version", found.version()));
    }

    private Map<String, Object> judgement(int level) {
        return fields("rubric", "root-flare", "level", level, "judgedOn", today(), "note", "even");
    }

    private Call judge(Endpoint endpoint, long id, String rubric) {
        var fields = judgement(1);
        if (endpoint.api()) {
            fields.put("rubric", rubric);
        } else {
            fields.remove("rubric");
            fields.put("do", "keep");
        }
        var filled = endpoint.path().replace("{rubric}", rubric).replace("{id}", "" + id);
        return new Call(endpoint, filled, endpoint.writes() ? fields : null, null);
    }

    private Call tree(Endpoint endpoint, String last) {
        if (endpoint.path().contains("/judgements")) {
            return judge(endpoint, school.tree().id(), "root-flare");
        }
        if (last.equals("left") || last.equals("list.csv")) {
            return at(endpoint, null, null, null);
        }
        if (last.equals("new")) {
            return call(endpoint, site());
        }
        var tree = school.infestedTree();
        if (endpoint.path().contains("/asks/")) {
            var ask = "" + school.ask(tree).id();
            var filled = endpoint.path().replaceAll("\\{ask(Id)?\\}", ask);
            var fields = last.equals("answer") ? fields("words", "Yes, go on.") : null;
            return new Call(
                    endpoint,
                    filled.replace("{id}", "" + tree.id()),
                    fields == null && !endpoint.api() ? fields() : fields,
                    null);
        }
        if (last.equals("hand-over")) {
            return handOver(endpoint, tree);
        }
        if (last.equals("leave")) {
            var fields = fields("leftOn", today(), "how", "DIED", "note", "of root rot in winter");
            if (!endpoint.api()) {
                fields.put("version", tree.version());
            }
            return at(endpoint, tree.id(), tree.version(), fields);
        }
        if (last.equals("change")) {
            var fields = tree();
            fields.put("version", tree.version());
            return at(endpoint, tree.id(), tree.version(), fields);
        }
        if (endpoint.path().contains("{task}")) {
            return care(endpoint, tree.id(), last);
        }
        if (endpoint.path().contains("{woundId}")) {
            var filled = endpoint.path().replace("{woundId}", "" + school.freshCut(tree));
            return new Call(endpoint, filled.replace("{id}", "" + tree.id()), null, null);
        }
        return at(
                endpoint,
                tree.id(),
                tree.version(),
                switch (last) {
                    case "{id}" -> tree();
                    case "observations" -> observation();
                    case "series" -> series(school.freshCut(tree));
                    case "measure" ->
                            fields(
                                    "observedOn",
                                    today(),
                                    "newHeight.1",
                                    "40",
                                    "newDiameter.1",
                                    "32,5");
                    case "first-look" ->
                            fields("question", "trunk", "baseMm", "32.5", "heightMm", "210");
                    case "wounds" -> wound();
                    case "branches" -> fields("name", "Lowest left", "role", "PRIMARY");
                    case "containers" ->
                            fields("kind", "training", "litres", 6.5, "since", today());
                    case "steps" -> fields("technique", "pest_control");
                    case "asks" ->
                            fields(
                                    "technique",
                                    "pest_control",
                                    "kind",
                                    "QUESTION",
                                    "words",
                                    "Which soap do I take?");
                    case "photos" ->
                            fields("photo", Pictures.jpeg(), "view", "FRONT", "caption", "before");
                    case "works" ->
                            fields(
                                    "technique",
                                    "feed_up",
                                    "doneOn",
                                    "2024-05-02",
                                    "foliagePercent",
                                    0.5,
                                    "note",
                                    "before");
                    case "found-done" -> fields("technique", "root_check", "doneOn", today());
                    default -> fields();
                });
    }

    private Call list(Endpoint endpoint) {
        var fields =
                fields(
                        "text",
                        "label,species,keeper,site,came_on\nMaple,acer_palmatum,nobody,nowhere,2024-03-01",
                        "kind",
                        "TREES",
                        "choice",
                        "DRY_RUN");
        var url = endpoint.path().replace("{kind}", "trees");
        return new Call(endpoint, url, endpoint.writes() ? fields : null, null);
    }

    private Call handOver(Endpoint endpoint, Tree tree) {
        var fields = fields("keeperId", school.fellow().id(), "since", today());
        if (!endpoint.api()) {
            fields.put("version", tree.version());
        }
        return at(endpoint, tree.id(), tree.version(), fields);
    }

    /** A fresh task that is due, or one that was said to be done. */
    private Call care(Endpoint endpoint, long treeId, String last) {
        var task = school.careTask(treeId);
        if (last.equals("taken-back")) {
            school.sayDone(treeId, task);
        }
        var filled = endpoint.path().replace("{task}", task).replace("{id}", "" + treeId);
        return new Call(
                endpoint,
                filled,
                fields("on", today(), "note", "stands in the lath house", "corrects", true),
                null);
    }

    /** On a site of its own, so that no other test's season changes. */
    private Call site(Endpoint endpoint, String last) {
        var site = school.newSite();
        var fields =
                last.equals("readings")
                        ? fields("text", "date,tmin,tmax\n" + today() + ",4.5,12")
                        : site();
        if (!endpoint.api()) {
            fields.put("version", site.version());
        }
        return at(endpoint, site.id(), site.version(), fields);
    }

    private Call photo(Endpoint endpoint) {
        var photo = school.photo();
        var fields =
                fields(
                        "takenOn",
                        today(),
                        "view",
                        "DETAIL",
                        "caption",
                        "after repotting",
                        "woundId",
                        null,
                        "stepId",
                        null);
        if (!endpoint.api()) {
            fields.values().removeIf(Objects::isNull);
            fields.put("version", photo.version());
        }
        return at(endpoint, photo.id(), photo.version(), fields);
    }

    private Call step(Endpoint endpoint, String last) {
        var reported = last.equals("sign-off") || last.equals("send-back");
        var step = reported ? school.reportedStep() : school.assignedStep();
        var fields =
                switch (last) {
                    case "report" ->
                            fields("doneOn", today(), "evidence", "2 scales on 20 shoots.");
                    case "report-with-photos" ->
                            fields(
                                    "doneOn",
                                    today(),
                                    "evidence",
                                    "2 scales on 20 shoots.",
                                    "photo",
                                    Pictures.jpeg());
                    case "sign-off" -> fields();
                    default -> fields("note", "Look at the undersides again.");
                };
        if (!endpoint.api()) {
            fields.put("version", step.version());
        }
        return at(endpoint, step.id(), step.version(), fields);
    }

    private Call session(Endpoint endpoint, List<String> words, String last) {
        if (words.size() == 1) {
            return call(endpoint, newSession());
        }
        if (DAY_WORDS.contains(last)) {
            return day(endpoint, last);
        }
        if (last.equals("attendance")) {
            return roll(endpoint);
        }
        if (endpoint.path().contains("/waiting/")) {
            var full = school.fullSession();
            var wait = "" + full.waiting().get(0).id();
            var path = endpoint.path().replaceAll("\\{wait(Id)?\\}", wait);
            return new Call(endpoint, path.replace("{id}", "" + full.id()), null, null);
        }
        var session = school.enrolledSession();
        if (last.equals("many")) {
            var tree = school.tree().id();
            return at(endpoint, session.id(), null, fields("treeIds", List.of(tree)));
        }
        if (last.equals("move")) {
            var fields = newSession();
            fields.keySet().removeAll(List.of("courseId", "lesson", "instructorIds"));
            fields.put("place", "Glasshouse");
            fields.put("because", "Frost.");
            if (!endpoint.api()) {
                fields.put("version", session.version());
            }
            return at(endpoint, session.id(), session.version(), fields);
        }
        var enrolment = session.enrolments().get(0).id();
        var tree = school.tree();
        var filled = endpoint.path().replaceAll("\\{enrolment(Id)?\\}", "" + enrolment);
        if (last.equals("cancellation")) {
            var fields = fields("reason", "Storm is forecast.");
            if (!endpoint.api()) {
                fields.put("version", session.version());
            }
            return at(endpoint, session.id(), session.version(), fields);
        }
        var fields =
                last.equals("enrolments")
                        ? fields(
                                "personId",
                                school.id(Who.STUDENT),
                                "treeId",
                                tree.id(),
                                "bench",
                                "4")
                        : null;
        if (fields != null && !endpoint.api()) {
            fields.remove("personId");
        }
        return new Call(
                endpoint,
                filled.replace("{id}", "" + session.id()),
                endpoint.verb().equals("POST") ? fields : null,
                session.version());
    }

    /** Who came to a class of today. */
    private Call roll(Endpoint endpoint) {
        var session = school.sessionToday();
        var student = session.enrolments().get(0).personId();
        var fields =
                endpoint.api()
                        ? fields("marks", List.of(fields("personId", student, "presence", "LATE")))
                        : fields("mark." + student, "LATE", "version", session.version());
        return at(endpoint, session.id(), session.version(), fields);
    }

    /** What is said of a class day on which work has been laid out. */
    private Call day(Endpoint endpoint, String last) {
        var session = school.workingSession();
        var coming = session.enrolments().get(0);
        if (last.equals("wishes")) {
            return at(
                    endpoint,
                    session.id(),
                    null,
                    fields("treeId", coming.treeId(), "technique", "pest_control", "wish", "PIN"));
        }
        var fields = fields("now", session.startsAt().plusMinutes(5).toString());
        if (endpoint.api()) {
            var later = session.startsAt().plusMinutes(40).toString();
            fields.put("absent", List.of());
            fields.put("late", List.of(fields("personId", coming.personId(), "at", later)));
            fields.put("overruns", List.of(fields("treeId", coming.treeId(), "until", later)));
            fields.put("breaks", List.of(fields("from", later, "until", session.endsAt() + "")));
            // there is no room for one beside that break
            fields.put("lesson", fields("minutes", 0));
        }
        return at(endpoint, session.id(), null, fields);
    }

    private Call course(Endpoint endpoint, int words, String last) {
        if (last.equals("{person}")) {
            var filled = endpoint.path().replace("{person}", "" + school.member().id());
            return new Call(
                    endpoint, filled.replace("{id}", "" + school.course().id()), null, null);
        }
        if (List.of("steps", "observations", "facts", "sign-offs").contains(last)) {
            return many(endpoint, last);
        }
        if (endpoint.path().endsWith("/series")
                || endpoint.path().endsWith("/v1/courses/{id}/sessions")) {
            var fields = newSession();
            fields.put("days", List.of(String.valueOf(fields.get("heldOn"))));
            fields.remove("courseId");
            if (endpoint.api()) {
                fields.remove("heldOn");
            }
            return at(endpoint, school.course().id(), null, fields);
        }
        var fields =
                switch (last) {
                    case "members" -> fields("personId", school.newcomer().id(), "as", "STUDENT");
                    case "sessions" -> newSession();
                    default ->
                            fields(
                                    "name",
                                    School.unique("Course"),
                                    "startsOn",
                                    today(),
                                    "endsOn",
                                    "" + school.today().date().plusMonths(6));
                };
        return words == 1
                ? call(endpoint, fields)
                : at(endpoint, school.course().id(), null, fields);
    }

    /** What is done to many trees of the course, of which one is enough here. */
    private Call many(Endpoint endpoint, String last) {
        var course = school.course().id();
        if (last.equals("sign-offs")) {
            var step = school.reportedStep();
            var fields =
                    endpoint.api()
                            ? fields(
                                    "steps",
                                    List.of(fields("stepId", step.id(), "version", step.version())))
                            : fields("step", step.id() + "@" + step.version());
            return at(endpoint, course, null, fields);
        }
        var tree = school.infestedTree().id();
        var fields =
                last.equals("steps")
                        ? fields("technique", "pest_control", "note", "Before Sunday.")
                        : fields("fact", "soil_moist", "value", "yes", "observedOn", today());
        if (endpoint.api()) {
            fields.put("trees", List.of(fields("treeId", tree)));
        } else {
            fields.put("tree", tree);
        }
        return at(endpoint, course, null, fields);
    }

    private Call person(Endpoint endpoint, String last) {
        if (endpoint.path().contains("/judgements")) {
            school.discardDrafts();
            return judge(endpoint, school.id(Who.STUDENT), "wiring-skill");
        }
        return switch (last) {
            case "{id}" -> at(endpoint, school.id(Who.STUDENT), null, null);
            case "lessons-next" -> at(endpoint, school.id(Who.STUDENT), null, null);
            case "skills" ->
                    at(
                            endpoint,
                            school.id(Who.STUDENT),
                            null,
                            fields(
                                    "lesson",
                                    "wiring-branches",
                                    "shown",
                                    true,
                                    "judgedOn",
                                    today()));
            case "record" -> at(endpoint, school.id(Who.STUDENT), null, null);
            case "confirmation" -> call(endpoint, fields("password", School.PASSWORD));
            case "forget", "forgetting" -> forget(endpoint);
            case "end" ->
                    call(
                            endpoint,
                            fields(
                                    "courseId",
                                    school.course().id(),
                                    "personId",
                                    school.member().id(),
                                    "on",
                                    today()));
            case "runs" -> course(endpoint, 3, last);
            case "sign-out" -> at(endpoint, school.newcomer().id(), null, fields());
            case "reset" -> at(endpoint, school.securedNewcomer().id(), null, fields());
            case "active" -> active(endpoint);
            case "roles" -> roles(endpoint);
            case "many", "look" ->
                    call(
                            endpoint,
                            endpoint.writes()
                                    ? fields("lines", School.unique("Many") + " Guest")
                                    : null);
            case "password-link" -> at(endpoint, school.newcomer().id(), null, fields());
            case "invitations" -> {
                var guest = newPerson();
                guest.remove("password");
                yield call(endpoint, guest);
            }
            case "courses" -> course(endpoint, 1, last);
            case "members" ->
                    call(
                            endpoint,
                            fields(
                                    "courseId",
                                    school.course().id(),
                                    "personId",
                                    school.newcomer().id(),
                                    "as",
                                    "STUDENT"));
            default -> call(endpoint, newPerson());
        };
    }

    /** By a link of somebody new, or the next sign-in of the tests would not work. */
    private Call password(Endpoint endpoint, String last) {
        return last.equals("forgotten")
                ? call(endpoint, fields("login", School.unique("nobody").replace(' ', '.')))
                : new Call(
                        endpoint,
                        "/password/" + school.passwordSecret(),
                        endpoint.writes() ? fields("newPassword", School.PASSWORD) : null,
                        null);
    }

    private Call forget(Endpoint endpoint) {
        var newcomer = school.newcomer();
        var fields = fields("version", newcomer.version(), "meant", true);
        return at(endpoint, newcomer.id(), newcomer.version(), endpoint.api() ? null : fields);
    }

    /** Of a sample there; the registrar of these tests does not teach, and so adds none. */
    private Call sample(Endpoint endpoint) {
        var course = school.sample();
        return at(endpoint, null, course, endpoint.api() ? null : fields("course", course));
    }

    private Call schoolName(Endpoint endpoint) {
        var now = school.name();
        var fields = fields("name", "Bench house school");
        if (!endpoint.api()) {
            fields.put("version", now.version());
        }
        return at(endpoint, null, now.version(), endpoint.writes() ? fields : null);
    }

    private Call roles(Endpoint endpoint) {
        var newcomer = school.newcomer();
        var fields = fields("roles", List.of("STUDENT", "INSTRUCTOR"));
        if (!endpoint.api()) {
            fields.put("version", newcomer.version());
        }
        return at(endpoint, newcomer.id(), newcomer.version(), endpoint.writes() ? fields : null);
    }

    private Call active(Endpoint endpoint) {
        var newcomer = school.newcomer();
        return at(
                endpoint,
                newcomer.id(),
                newcomer.version(),
                fields("version", newcomer.version(), "active", false));
    }

    private Map<String, Object> front(String last) {
        if (last.equals("tokens")) {
            return fields("name", "Weather station", "scope", "READ", "days", 30);
        }
        if (last.equals("password")) {
            // the wrong one, or the next sign-in of the tests would not work
            return fields("oldPassword", "not the old one", "newPassword", School.PASSWORD);
        }
        if (last.equals("on")) {
            return fields("code", "000000");
        }
        if (!last.equals("set-up")) {
            return fields();
        }
        var fields = newPerson();
        fields.put("code", "no such code");
        fields.put("school", "Bench house school");
        return fields;
    }

    private Map<String, Object> newPerson() {
        return fields(
                "name",
                "Somebody New",
                "login",
                School.unique("new").replace(' ', '.'),
                "password",
                School.PASSWORD,
                "roles",
                List.of("STUDENT"));
    }

    private Map<String, Object> newSession() {
        return fields(
                "courseId",
                school.course().id(),
                "heldOn",
                "" + school.dayAhead(),
                "startsAt",
                "09:30",
                "endsAt",
                "12:30",
                "lesson",
                "wiring-branches",
                "place",
                "Bench house",
                "instructorIds",
                List.of(school.id(Who.INSTRUCTOR)));
    }

    private Map<String, Object> tree() {
        return fields(
                "label",
                School.unique("Maple"),
                "species",
                "acer_palmatum",
                "keeperId",
                school.id(Who.STUDENT),
                "siteId",
                school.site().id(),
                "cameOn",
                "" + school.today().date().minusYears(4),
                "origin",
                "seed",
                "note",
                "from the long bed");
    }

    private Map<String, Object> site() {
        return fields(
                "name",
                School.unique("Yard"),
                "latitude",
                -37.5,
                "longitude",
                144.5,
                "zone",
                "Australia/Melbourne",
                "schoolGround",
                true);
    }

    private Map<String, Object> wound() {
        return fields(
                "place",
                "behind the second branch",
                "madeOn",
                today(),
                "firstWidthMm",
                24.0,
                "firstLengthMm",
                30.0,
                "heightMm",
                110.0,
                "bearingDegrees",
                200.0,
                "deadwoodByDesign",
                false);
    }

    private Map<String, Object> series(long woundId) {
        return fields(
                "observedOn",
                today(),
                "note",
                "in the rain",
                "diameters",
                List.of(fields("heightMm", 40.0, "diameterMm", 32.5)),
                "wounds",
                List.of(fields("woundId", woundId, "openMm", 20.0)),
                "whole",
                List.of(fields("fact", "shoot_extension_mm", "value", "220")),
                "confirmed",
                List.of("slip:height40:325"));
    }

    private Map<String, Object> observation() {
        return fields("fact", "pest_level", "value", "1", "observedOn", today(), "note", "few");
    }

    private String today() {
        return school.today().date().toString();
    }

    private static Call call(Endpoint endpoint, Map<String, Object> fields) {
        return at(endpoint, null, null, fields);
    }

    private static Call at(
            Endpoint endpoint,
            @Nullable Long id,
            @Nullable Long version,
            @Nullable Map<String, Object> fields) {
        var url =
                endpoint.path()
                        .replace("{id}", "" + id)
                        .replace("{file}", "hollow-cut.svg")
                        .replace("{code}", code(endpoint.path()));
        return new Call(endpoint, url, endpoint.writes() ? fields : null, version);
    }

    private static String code(String path) {
        if (path.contains("lessons")) {
            return "wiring-branches";
        }
        if (path.contains("rubrics")) {
            return "root-flare";
        }
        return path.contains("species") ? "acer_palmatum" : "pest_control";
    }

    /** Names and values in turn. */
    private static Map<String, Object> fields(Object... inTurn) {
        var fields = new LinkedHashMap<String, Object>();
        for (int i = 0; i < inTurn.length; i += 2) {
            fields.put((String) inTurn[i], inTurn[i + 1]);
        }
        return fields;
    }
}
