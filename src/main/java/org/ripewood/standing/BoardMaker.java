package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/**
 * Makes a course's board, in a number of queries that does not depend on how many trees it has: 18
 * for ten as for a hundred.
 */
@ApplicationScoped
class BoardMaker {

    private static final int MOST_HOLDS = 12;

    private final People people;
    private final Trees trees;
    private final SubjectGatherer gatherer;

    BoardMaker(People people, Trees trees, SubjectGatherer gatherer) {
        this.people = people;
        this.trees = trees;
        this.gatherer = gatherer;
    }

    Board make(
            Actor actor,
            long courseId,
            LocalDate on,
            Board.@Nullable Headline headline,
            PageRequest page) {
        people.getCourse(actor, courseId);
        people.requireRuns(actor, courseId, "its board");
        var students =
                people.members(courseId, Role.STUDENT).stream()
                        .collect(Collectors.toMap(Person::id, person -> person));
        var kept = students.isEmpty() ? List.<Tree>of() : trees.ofKeepers(students.keySet());
        var ids = kept.stream().map(Tree::id).toList();
        var gathered = gatherer.many(ids, students.values(), on);
        if (gathered.isEmpty()) {
            return new Board(courseId, on, Map.of(), List.of(), Paged.of(List.of(), page, 0));
        }
        var headlines = new Headlines(new Usefulness(gathered.get(0).content()));
        var leads = gathered.stream().map(headlines::of).toList();
        return new Board(
                courseId,
                on,
                counts(leads),
                holds(gathered),
                rows(leads, headline, page, lead -> row(headlines, lead, students)));
    }

    private static Map<Board.Headline, Integer> counts(Collection<Headlines.Lead> leads) {
        var counts = new EnumMap<Board.Headline, Integer>(Board.Headline.class);
        leads.forEach(lead -> counts.merge(lead.headline(), 1, Integer::sum));
        return counts;
    }

    private static Paged<Board.Row> rows(
            List<Headlines.Lead> leads,
            Board.@Nullable Headline headline,
            PageRequest page,
            Function<Headlines.Lead, Board.Row> row) {
        var chosen =
                leads.stream()
                        .filter(lead -> headline == null || lead.headline() == headline)
                        .sorted(
                                Comparator.comparing(Headlines.Lead::headline)
                                        .thenComparing(lead -> lead.tree().tree().label())
                                        .thenComparing(lead -> lead.tree().tree().id()))
                        .toList();
        var shown =
                chosen.stream()
                        .skip((long) page.page() * page.size())
                        .limit(page.size())
                        .map(row)
                        .toList();
        return Paged.of(shown, page, chosen.size());
    }

    private static Board.Row row(
            Headlines headlines, Headlines.Lead lead, Map<Long, Person> students) {
        var gathered = lead.tree();
        var tree = gathered.tree();
        var keeper = students.get(tree.keeperId());
        var step = lead.step();
        var standing = lead.standing();
        var code = step != null ? step.technique : standing != null ? standing.technique() : null;
        return new Board.Row(
                tree.id(),
                tree.label(),
                gathered.content().species(tree.species()).common(),
                tree.keeperId(),
                keeper == null ? "" : keeper.name(),
                lead.headline(),
                code,
                code == null ? null : gathered.content().titleOf(code),
                step == null ? null : step.id(),
                verdicts(gathered.standings()),
                headlines.sentence(lead),
                Headlines.opening(lead));
    }

    private static Map<Verdict, Integer> verdicts(List<Standing> standings) {
        var counts = new EnumMap<Verdict, Integer>(Verdict.class);
        standings.forEach(standing -> counts.merge(standing.verdict(), 1, Integer::sum));
        return counts;
    }

    /** On how many trees each thing holds work back; waiting for a turn is no cause of its own. */
    private static List<Board.HoldCount> holds(List<TreeOnDay> gathered) {
        var trees = new HashMap<String, Integer>();
        for (var tree : gathered) {
            var teller = new ReasonTeller(tree.content(), tree.subject().traits());
            tree.with(Verdict.HELD).stream()
                    .flatMap(standing -> standing.reasons().stream())
                    .filter(Headlines::holdsByItself)
                    .map(teller::titleOf)
                    .distinct()
                    .forEach(title -> trees.merge(title, 1, Integer::sum));
        }
        return trees.entrySet().stream()
                .sorted(
                        Map.Entry.<String, Integer>comparingByValue()
                                .reversed()
                                .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_HOLDS)
                .map(entry -> new Board.HoldCount(entry.getKey(), entry.getValue()))
                .toList();
    }
}
