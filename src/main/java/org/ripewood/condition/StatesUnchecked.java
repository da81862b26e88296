package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.records.TreeRecord;
import org.ripewood.sites.Seasons;
import org.ripewood.sites.Site;
import org.ripewood.trees.Days;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;

/**
 * Trees on a day, derived from their records. For rooms that have checked whose trees they are;
 * doors ask {@link TreeStates}.
 */
@ApplicationScoped
@Transactional
public class StatesUnchecked {

    private final RecordsUnchecked records;
    private final CourseContent content;
    private final Seasons seasons;
    private final ClosedWounds closedWounds;
    private final SchoolShoots schoolShoots;
    private final Days days;

    StatesUnchecked(
            RecordsUnchecked records,
            CourseContent content,
            Seasons seasons,
            ClosedWounds closedWounds,
            SchoolShoots schoolShoots,
            Days days) {
        this.schoolShoots = schoolShoots;
        this.closedWounds = closedWounds;
        this.seasons = seasons;
        this.records = records;
        this.content = content;
        this.days = days;
    }

    /** Many trees on a day, in a number of queries that does not depend on how many. */
    public Map<Long, TreeState> on(Collection<Long> treeIds, LocalDate on) {
        return states(records.on(Set.copyOf(treeIds), on), on).stream()
                .collect(Collectors.toMap(state -> state.tree().id(), Function.identity()));
    }

    /** Trees that were just read, on a day. */
    public List<TreeState> of(List<Tree> trees, LocalDate on) {
        return states(records.of(trees, on), on);
    }

    private List<TreeState> states(List<TreeRecord> found, LocalDate on) {
        days.requireAskable("on", on);
        var inForce = content.inForce();
        return found.stream().map(record -> state(record, inForce)).toList();
    }

    /** A tree that was just read, on a day. */
    public TreeState of(ReachedTree reached, LocalDate on) {
        days.requireAskable("on", on);
        return state(records.of(reached, on), content.inForce());
    }

    /** The same at its site, which was just read. */
    public TreeState of(ReachedTree reached, Site site, LocalDate on) {
        days.requireAskable("on", on);
        return state(records.of(reached, site, on), content.inForce());
    }

    private TreeState state(TreeRecord record, Content content) {
        var species = content.kindOf(record.tree().species());
        var season = seasons.of(record.site(), species);
        return TreeState.of(
                record,
                content,
                TreeKind.of(content, species, season, schoolShoots.of(species)),
                species,
                season,
                closedWounds.of(species));
    }
}
