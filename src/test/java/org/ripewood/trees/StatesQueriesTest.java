package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.condition.StatesUnchecked;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Work;
import org.ripewood.people.Courses;
import org.ripewood.platform.Today;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.WorksDone;
import org.ripewood.records.Wounds;
import org.ripewood.sites.NewSite;

@QuarkusTest
class StatesQueriesTest {

    /**
     * Trees, sites with months, observations, wounds, branches, containers, works, names, former
     * keepers.
     */
    private static final long QUERIES = 9;

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject Trees trees;
    @Inject StatesUnchecked statesUnchecked;
    @Inject TreeSites treeSites;
    @Inject Observations observing;
    @Inject Wounds wounds;
    @Inject Branches branches;
    @Inject Containers containers;
    @Inject WorksDone worksDone;
    @Inject Today today;
    @Inject SessionFactory sessions;

    private School school;
    private LocalDate day;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
        sessions.getStatistics().setStatisticsEnabled(true);
    }

    @Test
    void fiftyTreesTakeAsManyQueriesAsFive() {
        var ids = IntStream.range(0, 50).mapToObj(this::treeWithARecord).toList();
        assertThat(queriesFor(ids.subList(0, 5))).isEqualTo(QUERIES);
        assertThat(queriesFor(ids)).isEqualTo(QUERIES);
    }

    @Test
    void noTreesTakeNoQueries() {
        assertThat(statesUnchecked.on(List.of(), day)).isEmpty();
        assertThat(queriesFor(List.of())).isZero();
    }

    @Test
    void idsOfNoTreeArePassedOver() {
        long known = treeWithARecord(1);
        assertThat(statesUnchecked.on(List.of(known, -7L), day)).containsOnlyKeys(known);
    }

    private long queriesFor(List<Long> ids) {
        var statistics = sessions.getStatistics();
        statistics.clear();
        var states = statesUnchecked.on(ids, day);
        long queries = statistics.getPrepareStatementCount();
        assertThat(states).hasSize(ids.size());
        assertThat(states.values())
                .allSatisfy(
                        state -> {
                            assertThat(state.facts().number(Fact.OPEN_WOUNDS)).isEqualTo(1);
                            assertThat(state.facts().number(Fact.PRIMARY_BRANCHES)).isEqualTo(1);
                            assertThat(state.facts().number(Fact.PEST_LEVEL)).isEqualTo(2);
                            assertThat(state.facts().number(Fact.DAYS_SINCE_FEEDING)).isZero();
                            assertThat(state.site().meanMinimaCelsius()).hasSize(12);
                        });
        return queries;
    }

    /** Each tree on a site of its own, so that a query for each site would be seen. */
    private long treeWithARecord(int number) {
        var months = IntStream.range(0, 12).mapToObj(i -> (double) i).toList();
        var site =
                treeSites.enter(
                        school.teacher,
                        new NewSite("Yard " + number, 50.0, 8.0, "UTC", null, months, months));
        var tree =
                trees.enter(
                        school.teacher,
                        new NewTree(
                                "Tree " + number,
                                "acer_palmatum",
                                school.keeper.personId(),
                                site.id(),
                                day.minusYears(1),
                                null,
                                null));
        long id = tree.id();
        observing.observe(
                school.keeper,
                id,
                new NewObservation("pest_level", "2", day, null, null, null, null, null));
        var wound =
                wounds.add(
                        school.teacher,
                        id,
                        new NewWound("left", day.minusDays(90), 20.0, 25.0, null, null, false));
        observing.observe(
                school.teacher,
                id,
                new NewObservation("wound_open_mm", "11", day, null, wound.id(), null, null, null));
        branches.add(school.teacher, id, new NewBranch("first", BranchRole.PRIMARY, null, null));
        containers.moveTo(school.keeper, id, new NewContainer("training", null, 6.0, day));
        worksDone.record(school.keeper, id, new Work("feed_up", day, 0, 0, 0, 0), "feeding", null);
        return id;
    }
}
