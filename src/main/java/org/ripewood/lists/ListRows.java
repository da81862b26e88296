package org.ripewood.lists;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.accounts.NewGuest;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.lists.ListText.Row;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/** Enters single rows through the rooms, and tells what they have against one. */
@Singleton
class ListRows {

    /** What rows may name: persons by login, sites, courses, trees by keeper and label. */
    record Known(
            Map<String, Long> logins,
            Map<String, Long> sites,
            Map<String, Long> courses,
            Map<String, List<Long>> trees) {}

    /** The rooms' names of fields, where a list's are others. */
    private static final Map<String, String> COLUMNS =
            Map.ofEntries(
                    Map.entry("keeperId", "keeper"),
                    Map.entry("siteId", "site"),
                    Map.entry("cameOn", "came_on"),
                    Map.entry("observedOn", "observed_on"),
                    Map.entry("heightMm", "height_mm"),
                    Map.entry("doneOn", "done_on"),
                    Map.entry("foliagePercent", "foliage_percent"),
                    Map.entry("rootPercent", "root_percent"),
                    Map.entry("countsAsDone", "counts_as_done"),
                    Map.entry("bearingDegrees", "bearing_degrees"),
                    Map.entry("enteredOn", "entered_on"));

    private final People people;
    private final Courses schoolCourses;
    private final PersonRegistration register;
    private final Trees trees;
    private final TreeSites treeSites;
    private final TreesUnchecked treesUnchecked;
    private final Observations observations;
    private final Inputs inputs;
    private final PastRows pasts;

    ListRows(
            People people,
            Courses schoolCourses,
            PersonRegistration register,
            Trees trees,
            TreeSites treeSites,
            TreesUnchecked treesUnchecked,
            Observations observations,
            Inputs inputs,
            PastRows pasts) {
        this.people = people;
        this.schoolCourses = schoolCourses;
        this.register = register;
        this.trees = trees;
        this.treeSites = treeSites;
        this.treesUnchecked = treesUnchecked;
        this.observations = observations;
        this.inputs = inputs;
        this.pasts = pasts;
    }

    Known known(Actor actor, ListKind kind) {
        var logins = people.loginsInReach(actor);
        return new Known(
                logins,
                treeSites.list(actor).stream()
                        .filter(site -> site.place() != null)
                        .collect(
                                Collectors.toMap(
                                        SiteLine::name, SiteLine::id, (one, other) -> one)),
                schoolCourses.list(actor).stream()
                        .collect(Collectors.toMap(Course::name, Course::id, (one, other) -> one)),
                kind.needed().contains("tree") ? treesOf(logins) : Map.of());
    }

    private Map<String, List<Long>> treesOf(Map<String, Long> logins) {
        return treesUnchecked.ofKeepers(logins.values()).stream()
                .collect(
                        Collectors.groupingBy(
                                tree -> tree.keeperId() + "/" + tree.label(),
                                Collectors.mapping(Tree::id, Collectors.toList())));
    }

    /** Enters a row, or says why not. */
    List<ListFault> faults(
            Actor actor, ListKind kind, Row row, Known known, Map<String, Integer> lines) {
        try {
            requireNeeded(kind, row);
            switch (kind) {
                case PEOPLE -> enterPerson(actor, row, known, lines);
                case TREES -> enterTree(actor, row, known);
                case READINGS -> enterReading(actor, row, known);
                case WORKS -> pasts.enterWork(actor, tree(row, known), row);
                case BRANCHES -> pasts.enterBranch(actor, tree(row, known), row);
                case CONTAINERS -> pasts.enterContainer(actor, tree(row, known), row);
            }
            return List.of();
        } catch (RowCells.Faulty faulty) {
            return faulty.faults();
        } catch (Refused refused) {
            return told(row, refused);
        }
    }

    private static void requireNeeded(ListKind kind, Row row) {
        var missing =
                kind.needed().stream()
                        .filter(column -> row.cell(column).isEmpty())
                        .map(
                                column ->
                                        new ListFault(
                                                row.line(),
                                                column,
                                                "expected a value, found nothing"))
                        .toList();
        if (!missing.isEmpty()) {
            throw new RowCells.Faulty(missing);
        }
    }

    private void enterPerson(Actor actor, Row row, Known known, Map<String, Integer> lines) {
        var login = row.cell("login");
        var earlier = lines.putIfAbsent(login, row.line());
        if (earlier != null) {
            throw RowCells.faulty(row, "login", "stands on line %d already".formatted(earlier));
        }
        var roles = roles(row);
        var guest = inputs.check(new NewGuest(row.cell("name"), login, roles));
        var course = row.cell("course");
        Long courseId = course.isEmpty() ? null : find(row, "course", course, known.courses());
        if (courseId != null && !roles.contains(Role.STUDENT)) {
            throw RowCells.faulty(
                    row, "course", "expected no course, or the role student beside it");
        }
        var person = register.enterGuest(actor, guest);
        if (courseId != null) {
            schoolCourses.join(actor, courseId, person.id(), Role.STUDENT);
        }
    }

    private static Set<Role> roles(Row row) {
        var roles = new HashSet<Role>();
        var words =
                Arrays.stream(Role.values())
                        .map(role -> role.name().toLowerCase(Locale.ROOT))
                        .toList();
        for (var word : row.cell("roles").toLowerCase(Locale.ROOT).split("[\\s+/,;]+", -1)) {
            if (words.contains(word)) {
                roles.add(Role.valueOf(word.toUpperCase(Locale.ROOT)));
            } else {
                throw RowCells.faulty(
                        row,
                        "roles",
                        "expected %s, found “%s”.%s"
                                .formatted(
                                        String.join(", ", words),
                                        word,
                                        Suggestion.maybe(words, word)));
            }
        }
        return roles;
    }

    private void enterTree(Actor actor, Row row, Known known) {
        var keeper = find(row, "keeper", row.cell("keeper"), known.logins());
        var site = find(row, "site", row.cell("site"), known.sites());
        trees.enter(
                actor,
                inputs.check(
                        new NewTree(
                                row.cell("label"),
                                row.cell("species"),
                                keeper,
                                site,
                                RowCells.day(row, "came_on"),
                                row.cells().get("origin"),
                                row.cells().get("note"))));
    }

    private static long tree(Row row, Known known) {
        var keeper = find(row, "keeper", row.cell("keeper"), known.logins());
        var label = row.cell("tree");
        var found = known.trees().getOrDefault(keeper + "/" + label, List.of());
        if (found.size() != 1) {
            var labels =
                    known.trees().keySet().stream()
                            .filter(each -> each.startsWith(keeper + "/"))
                            .map(each -> each.substring(each.indexOf('/') + 1))
                            .toList();
            throw RowCells.faulty(
                    row,
                    "tree",
                    found.isEmpty()
                            ? "this keeper has no tree “%s”.%s"
                                    .formatted(label, Suggestion.maybe(labels, label))
                            : "this keeper has %d trees “%s”".formatted(found.size(), label));
        }
        return found.get(0);
    }

    private void enterReading(Actor actor, Row row, Known known) {
        observations.observe(
                actor,
                tree(row, known),
                inputs.check(
                        new NewObservation(
                                row.cell("fact"),
                                row.cell("value"),
                                RowCells.day(row, "observed_on"),
                                row.cells().get("note"),
                                null,
                                null,
                                RowCells.number(row, "height_mm"),
                                null)));
    }

    private static Long find(Row row, String column, String named, Map<String, Long> known) {
        var id = known.get(named);
        if (id == null) {
            throw RowCells.faulty(
                    row,
                    column,
                    "there is no %s “%s” that you can see.%s"
                            .formatted(column, named, Suggestion.maybe(known.keySet(), named)));
        }
        return id;
    }

    private static List<ListFault> told(Row row, Refused refused) {
        var problem = refused.problem();
        if (problem.faults().isEmpty()) {
            var maybe = problem.maybe() == null ? "" : " " + problem.maybe();
            return List.of(new ListFault(row.line(), "", problem.detail() + maybe));
        }
        var faults = new ArrayList<ListFault>();
        for (Fault fault : problem.faults()) {
            faults.add(
                    new ListFault(
                            row.line(),
                            COLUMNS.getOrDefault(fault.field(), fault.field()),
                            fault.message()));
        }
        return faults;
    }
}
