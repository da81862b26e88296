package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.season.StageClock;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;

/** Trees on a day, derived from their records. */
@ApplicationScoped
class States {

    private final Records records;
    private final CourseContent content;
    private final Days days;

    States(Records records, CourseContent content, Days days) {
        this.records = records;
        this.content = content;
        this.days = days;
    }

    Map<Long, TreeState> on(Collection<Long> treeIds, LocalDate on) {
        days.requireAskable("on", on);
        var inForce = content.inForce();
        var states = new HashMap<Long, TreeState>();
        for (var record : records.on(Set.copyOf(treeIds), on)) {
            states.put(record.tree().id(), state(record, inForce));
        }
        return states;
    }

    private static TreeState state(TreeRecord record, Content content) {
        var facts = FactsOnDay.of(record);
        return new TreeState(
                record.tree(),
                record.site(),
                record.on(),
                facts,
                record.ledger(),
                stages(record, content, facts));
    }

    /** The typical year of the species at the site, put right by what somebody saw last. */
    private static StageClock stages(TreeRecord record, Content content, Facts facts) {
        var traits = content.species(record.tree().species()).traits();
        var typical = TypicalYear.of(traits.habit(), record.site().latitude());
        var seen = facts.find(Fact.GROWTH_STAGE);
        return seen == null
                ? typical
                : typical.from((int) facts.number(Fact.GROWTH_STAGE), seen.observedOn());
    }
}
