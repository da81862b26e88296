package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.NewDeparture;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/**
 * The record of a tree that left the school: everything that writes into it is refused, whoever
 * does it, and everything that reads it is answered as before.
 */
@QuarkusTest
class ClosedRecordTest {

    /** Every address that writes of a tree. */
    private static final Set<String> OF_TREES =
            """
            PUT /api/v1/trees/{id}
            POST /api/v1/trees/{id}/leave
            POST /api/v1/trees/{id}/observations
            POST /api/v1/trees/{id}/series
            POST /api/v1/trees/{id}/wounds
            POST /api/v1/trees/{id}/branches
            POST /api/v1/trees/{id}/containers
            POST /api/v1/trees/{id}/works
            POST /api/v1/trees/{id}/photos
            PUT /api/v1/photos/{id}
            DELETE /api/v1/photos/{id}
            POST /api/v1/trees/{id}/aftercare/{task}/done
            POST /api/v1/trees/{id}/aftercare/{task}/not-needed
            POST /api/v1/trees/{id}/aftercare/{task}/taken-back
            POST /api/v1/trees/{id}/judgements
            PUT /api/v1/judgements/{id}
            DELETE /api/v1/judgements/{id}
            POST /api/v1/judgements/{id}/signature
            POST /api/v1/judgements/{id}/opening
            POST /api/v1/trees/{id}/asks
            POST /api/v1/trees/{id}/asks/{ask}/answer
            DELETE /api/v1/trees/{id}/asks/{ask}
            POST /trees/{id}/asks
            POST /trees/{id}/asks/{askId}/answer
            POST /trees/{id}/asks/{askId}/take-back
            POST /steps/{id}/report-with-photos
            POST /api/v1/trees/{id}/steps
            POST /api/v1/trees/{id}/found-done
            POST /api/v1/steps/{id}/report
            POST /api/v1/steps/{id}/sign-off
            POST /api/v1/steps/{id}/send-back
            POST /api/v1/steps/{id}/withdraw
            POST /api/v1/sessions/{id}/enrolments
            POST /api/v1/sessions/{id}/wishes
            POST /trees/{id}/leave
            POST /trees/{id}/change
            POST /trees/{id}/wounds
            POST /trees/{id}/branches
            POST /trees/{id}/containers
            POST /trees/{id}/works
            POST /trees/{id}/photos
            POST /photos/{id}/about
            POST /photos/{id}/remove
            POST /trees/{id}/observations
            POST /trees/{id}/measure
            POST /trees/{id}/first-look
            POST /trees/{id}/aftercare/{task}/done
            POST /trees/{id}/aftercare/{task}/not-needed
            POST /trees/{id}/aftercare/{task}/taken-back
            POST /trees/{id}/judgements/{rubric}
            POST /judgements/{id}/discard
            POST /judgements/{id}/sign
            POST /judgements/{id}/open
            POST /trees/{id}/steps
            POST /trees/{id}/found-done
            POST /steps/{id}/report
            POST /steps/{id}/sign-off
            POST /steps/{id}/send-back
            POST /steps/{id}/withdraw
            POST /sessions/{id}/enrolments
            POST /sessions/{id}/day/wishes
            """
                    .lines()
                    .collect(Collectors.toSet());

    /**
     * Every other address below a tree's, a step's, a photo's or a judgement's: to enter one, and
     * to take one in again that left.
     */
    private static final Set<String> STAYS =
            Set.of(
                    "POST /api/v1/trees",
                    "POST /trees",
                    "POST /api/v1/trees/{id}/hand-over",
                    "POST /trees/{id}/hand-over");

    /** What was typed stands in the form that comes back, where there still is such a form. */
    private static final Map<String, String> TYPED =
            Map.of(
                    "POST /trees/{id}/leave", "of root rot in winter",
                    "POST /trees/{id}/change", "from the long bed",
                    "POST /trees/{id}/wounds", "behind the second branch",
                    "POST /trees/{id}/branches", "Lowest left",
                    "POST /trees/{id}/containers", "6.5",
                    "POST /trees/{id}/photos", ">before</textarea>",
                    "POST /photos/{id}/about", "after repotting",
                    "POST /trees/{id}/observations", "few",
                    "POST /trees/{id}/measure", "32,5",
                    "POST /sessions/{id}/enrolments", "value=\"4\"");

    private static final Map<String, Endpoint> ENDPOINTS =
            Endpoint.all().stream().collect(Collectors.toMap(Endpoint::toString, one -> one));

    @Inject School opening;
    @Inject Tables tables;
    @Inject Trees trees;
    @Inject Departures departures;
    @Inject TreesUnchecked treesUnchecked;

    private School school;
    private Calls calls;

    @BeforeEach
    void open() {
        school = opening.open();
        calls = new Calls(school);
        // one stays, or there is no tree a form could offer
        school.tree();
    }

    @Test
    void nothingIsWrittenOfATreeThatLeft() {
        var wrong = new ArrayList<String>();
        OF_TREES.forEach(
                address -> {
                    var call = ofATreeThatLeft(address);
                    var before = tables.rows();
                    var heard = call.send(school, whoMay(address));
                    var text = heard.asString();
                    if (heard.statusCode() != 409
                            || !text.contains("The tree left the school on")
                            || !text.contains("Maybe it came back")
                            || !text.contains(TYPED.getOrDefault(address, ""))
                            || !tables.rows().equals(before)) {
                        wrong.add("%s: %d %s".formatted(address, heard.statusCode(), text));
                    }
                });
        assertThat(wrong).isEmpty();
    }

    /** A new address has to be put into one of the two sets. */
    @Test
    void everyAddressThatWritesOfATreeIsTried() {
        var writes =
                ENDPOINTS.keySet().stream()
                        .filter(address -> !address.startsWith("GET "))
                        .filter(
                                address ->
                                        address.matches(
                                                "[A-Z]+ (/api/v1)?/(trees|steps|photos|judgements).*"))
                        .collect(Collectors.toCollection(TreeSet::new));
        var told = new TreeSet<>(OF_TREES);
        told.removeIf(address -> address.contains("/sessions/"));
        told.addAll(STAYS);
        assertThat(writes).isEqualTo(told);
        assertThat(ENDPOINTS.keySet()).containsAll(OF_TREES);
    }

    @Test
    void everythingIsReadAsBefore() {
        var wrong = new ArrayList<String>();
        RoleTable.rows()
                .forEach(
                        (address, expected) -> {
                            if (address.matches("GET (/api/v1)?/(trees|steps|photos)/.*")) {
                                var call = ofATreeThatLeft(address);
                                expected.forEach(
                                        (who, status) -> {
                                            int found = call.send(school, who).statusCode();
                                            if (found != status) {
                                                wrong.add(address + " " + who + " " + found);
                                            }
                                        });
                            }
                        });
        assertThat(wrong).isEmpty();
    }

    /** A call on things made for it, all of whose trees left thereupon. */
    private Call ofATreeThatLeft(String address) {
        var before = ids(kept());
        var call = calls.of(ENDPOINTS.get(address));
        var made = kept().stream().filter(tree -> !before.contains(tree.id())).toList();
        for (var tree : made) {
            var now = trees.get(school.actor(Who.INSTRUCTOR), tree.id());
            departures.leave(
                    school.actor(Who.INSTRUCTOR),
                    now.id(),
                    now.version(),
                    new NewDeparture(school.today().date(), Departure.How.GIVEN_AWAY, null));
        }
        return call;
    }

    private List<Tree> kept() {
        return treesUnchecked.ofKeepers(List.of(school.id(Who.STUDENT)));
    }

    private static Set<Long> ids(List<Tree> trees) {
        return trees.stream().map(Tree::id).collect(Collectors.toSet());
    }

    private static Who whoMay(String address) {
        return RoleTable.rows().get(address).entrySet().stream()
                .filter(row -> row.getKey() != Who.ANONYMOUS && row.getValue() < 400)
                .findFirst()
                .orElseThrow()
                .getKey();
    }
}
