package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.Courses;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;

/** What two people do to one tree at the same moment. */
@QuarkusTest
class AtOnceTest {

    private static final int PEOPLE = 4;
    private static final int DONE = 200;

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject TreeSites treeSites;
    @Inject Trees trees;
    @Inject Observations observing;
    @Inject Today today;

    private School school;
    private LocalDate day;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
    }

    @Test
    void ofManyCorrectionsOneStandsAndTheOthersHearOfIt() throws Exception {
        var tree = school.tree();
        var wrong = observing.observe(school.teacher, tree.id(), seen("4", null));
        var answers =
                atOnce(() -> observing.observe(school.teacher, tree.id(), seen("1", wrong.id())));
        assertThat(answers).containsExactlyInAnyOrder(DONE, 409, 409, 409);
        var kept = observing.list(school.teacher, tree.id(), new PageRequest(0, 10));
        assertThat(kept.total()).isEqualTo(2);
    }

    @Test
    void ofManyChangesOneIsMadeAndTheOthersAreStale() throws Exception {
        var tree = school.tree();
        var answers =
                atOnce(
                        () ->
                                trees.change(
                                        school.teacher,
                                        tree.id(),
                                        tree.version(),
                                        school.newTree("Renamed")));
        assertThat(answers).containsExactlyInAnyOrder(DONE, 412, 412, 412);
        assertThat(trees.get(school.teacher, tree.id()).version()).isEqualTo(tree.version() + 1);
    }

    private NewObservation seen(String level, Long supersedes) {
        return new NewObservation("pest_level", level, day, null, null, null, null, supersedes);
    }

    /** The status each of several callers is answered with. */
    private static Integer[] atOnce(Callable<?> call)
            throws InterruptedException, ExecutionException {
        var start = new CyclicBarrier(PEOPLE);
        var callers = Executors.newFixedThreadPool(PEOPLE);
        try {
            var answers =
                    IntStream.range(0, PEOPLE)
                            .mapToObj(i -> callers.submit(() -> answer(start, call)))
                            .toList();
            var statuses = new Integer[PEOPLE];
            for (int i = 0; i < PEOPLE; i++) {
                statuses[i] = answers.get(i).get();
            }
            return statuses;
        } finally {
            callers.shutdownNow();
        }
    }

    private static int answer(CyclicBarrier start, Callable<?> call) throws Exception {
        start.await();
        try {
            call.call();
            return DONE;
        } catch (Refused refused) {
            return refused.problem().status();
        }
    }
}
