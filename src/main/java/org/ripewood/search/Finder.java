package org.ripewood.search;

import static java.util.stream.Collectors.toSet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.TreeLists;
import org.ripewood.trees.TreeName;

/**
 * Finds by words, which must all be found in a thing, in any order, as parts of its words, in any
 * case, with or without accents. Only names within the reader's reach are looked through, and never
 * what somebody wrote of a tree or a person, so that nothing hidden can be guessed at.
 */
@ApplicationScoped
public class Finder {

    /** Longest question, in letters. */
    public static final int LONGEST = 80;

    /** Further words of a question say nothing more. */
    private static final int MOST_WORDS = 8;

    private static final int IN_A_GROUP = 10;

    private static final Comparator<Entry> BY_TITLE =
            Comparator.comparing(
                            (Entry entry) -> entry.hit().title(), String.CASE_INSENSITIVE_ORDER)
                    .thenComparing(entry -> entry.hit().key());

    private final TreeLists trees;
    private final People people;
    private final Courses courses;
    private final ContentEntries taught;
    private final CourseContent content;

    Finder(
            TreeLists trees,
            People people,
            Courses courses,
            ContentEntries taught,
            CourseContent content) {
        this.trees = trees;
        this.people = people;
        this.courses = courses;
        this.taught = taught;
        this.content = content;
    }

    /**
     * Everything found, kind by kind, the best ten of each.
     *
     * @throws Refused 400 when the question is too long
     */
    public Found find(Actor actor, String typed) {
        var words = words(typed);
        var entries = words.isEmpty() ? List.<Entry>of() : all(actor);
        var byKind = new EnumMap<Kind, List<Entry>>(Kind.class);
        ranked(entries, words)
                .forEach(
                        entry ->
                                byKind.computeIfAbsent(
                                                entry.hit().kind(), kind -> new ArrayList<>())
                                        .add(entry));
        var groups =
                byKind.entrySet().stream()
                        .map(
                                group ->
                                        new Found.Group(
                                                group.getKey(),
                                                hits(group.getValue(), 0, IN_A_GROUP),
                                                group.getValue().size()))
                        .toList();
        return new Found(typed.strip(), groups, groups.isEmpty() ? maybe(entries, words) : null);
    }

    /** All that is found of one kind, page by page, the best first. */
    public Paged<Hit> all(Actor actor, String typed, Kind kind, PageRequest page) {
        var words = words(typed);
        var found = words.isEmpty() ? List.<Entry>of() : ranked(of(actor, kind), words);
        return Paged.of(
                hits(found, (long) page.page() * page.size(), page.size()), page, found.size());
    }

    private static List<String> words(String typed) {
        if (typed.codePointCount(0, typed.length()) > LONGEST) {
            throw Refused.invalid(
                    "q",
                    "expected at most %d letters, found %d"
                            .formatted(LONGEST, typed.codePointCount(0, typed.length())));
        }
        return Letters.words(typed).stream().distinct().limit(MOST_WORDS).toList();
    }

    private static List<Hit> hits(List<Entry> entries, long from, int most) {
        return entries.stream().skip(from).limit(most).map(Entry::hit).toList();
    }

    private static List<Entry> ranked(Collection<Entry> entries, List<String> words) {
        record Ranked(Entry entry, int rank) {}
        return entries.stream()
                .map(entry -> new Ranked(entry, entry.rank(words)))
                .filter(ranked -> ranked.rank() >= 0)
                .sorted(
                        Comparator.comparingInt(Ranked::rank)
                                .thenComparing(Ranked::entry, BY_TITLE))
                .map(Ranked::entry)
                .toList();
    }

    /** The question with each word that is nowhere put right; null when one cannot be. */
    private static @Nullable String maybe(List<Entry> entries, List<String> words) {
        var known = new HashSet<String>();
        entries.forEach(
                entry -> {
                    known.addAll(entry.title());
                    known.addAll(entry.other());
                });
        var meant = new ArrayList<String>();
        for (var word : words) {
            Predicate<Entry> has = entry -> entry.rank(List.of(word)) >= 0;
            var near = entries.stream().anyMatch(has) ? word : Slips.nearest(known, word);
            if (near == null) {
                return null;
            }
            meant.add(near);
        }
        return meant.equals(words) || meant.isEmpty() ? null : String.join(" ", meant);
    }

    private List<Entry> all(Actor actor) {
        var all = new ArrayList<>(trees(actor));
        all.addAll(people(actor));
        all.addAll(courses(actor));
        all.addAll(taught.all());
        return all;
    }

    private List<Entry> of(Actor actor, Kind kind) {
        return switch (kind) {
            case TREE -> trees(actor);
            case PERSON -> people(actor);
            case COURSE -> courses(actor);
            case TECHNIQUE, LESSON, SPECIES, RUBRIC, WORD ->
                    taught.all().stream().filter(entry -> entry.hit().kind() == kind).toList();
        };
    }

    private List<Entry> trees(Actor actor) {
        var inForce = content.inForce();
        return trees.names(actor).stream()
                .map(tree -> tree(tree, inForce.kindOf(tree.species())))
                .toList();
    }

    private static Entry tree(TreeName tree, Species species) {
        var about =
                "%s, kept by %s%s"
                        .formatted(
                                species.common(),
                                tree.keeper(),
                                tree.leftOn() == null ? "" : ", left the school");
        return Entry.of(
                Hit.of(Kind.TREE, Long.toString(tree.id()), tree.label(), about),
                List.of(species.common(), species.latin(), tree.keeper()),
                List.of());
    }

    private List<Entry> people(Actor actor) {
        return people.known(actor).entrySet().stream().map(Finder::person).toList();
    }

    private static Entry person(Map.Entry<Long, String> person) {
        return Entry.of(
                Hit.of(Kind.PERSON, person.getKey().toString(), person.getValue(), ""),
                List.of(),
                List.of());
    }

    private List<Entry> courses(Actor actor) {
        var taughtIds =
                courses.as(actor, Role.INSTRUCTOR).stream().map(Course::id).collect(toSet());
        return courses.list(actor).stream()
                .map(
                        course ->
                                course(
                                        course,
                                        actor.is(Role.REGISTRAR)
                                                || taughtIds.contains(course.id())))
                .toList();
    }

    /** Who runs a course comes to its trees; everybody else to what it teaches and when. */
    private static Entry course(Course course, boolean runs) {
        var key = Long.toString(course.id());
        var years =
                course.startsOn().getYear() == course.endsOn().getYear()
                        ? "" + course.startsOn().getYear()
                        : "%d to %d"
                                .formatted(course.startsOn().getYear(), course.endsOn().getYear());
        var page = Kind.COURSE.page(key) + (runs ? "" : "/about");
        return Entry.of(
                new Hit(Kind.COURSE, key, course.name(), years, page), List.of(), List.of());
    }
}
