package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/**
 * A tree's origin and note are the words of whoever wrote them: handed on to another course, nobody
 * there reads those of its former keeper, by any door.
 */
@Tag("one-database")
@QuarkusTest
class FormerKeepersWordsTest {

    @Inject School opening;
    @Inject Trees trees;
    @Inject HandOvers handOvers;

    private School school;
    private String mark;
    private Tree tree;

    /** Two wordings of the former keeper's, one replaced by the other. */
    @BeforeEach
    void handOn() {
        school = opening.open();
        mark = School.unique("aunt in the hills") + ".";
        var keeper = school.actor(Who.STUDENT);
        var entered =
                trees.enter(keeper, said(school.tree(), "seed of my " + mark, "first " + mark));
        var again = said(entered, entered.origin(), "second " + mark);
        var changed = trees.change(keeper, entered.id(), entered.version(), again);
        handOvers.handOver(
                school.actor(Who.REGISTRAR),
                changed.id(),
                changed.version(),
                new HandOver(school.id(Who.OTHER_STUDENT), school.today().date()));
        tree = trees.get(school.actor(Who.OTHER_STUDENT), changed.id());
    }

    @Test
    void noDoorTellsThemToTheNewKeeperAndTheirInstructor() {
        var doors =
                Doors.about(school, tree, school.id(Who.OTHER_STUDENT), school.otherCourse().id());
        var former = school.person(Who.STUDENT).name() + "\"";
        var told = new ArrayList<String>();
        for (var reader : List.of(Who.OTHER_STUDENT, Who.OTHER_INSTRUCTOR)) {
            doors.forEach(
                    (address, url) -> {
                        var text = Doors.text(school.as(reader).get(url));
                        if (text.contains(mark)) {
                            told.add(reader + " by " + address);
                        }
                        if (address.endsWith("/record") && text.contains(former)) {
                            told.add(reader + " the name by " + address);
                        }
                    });
        }
        assertThat(told).isEmpty();
    }

    /** What is hidden from everybody could be seen by no test. */
    @Test
    void whoReachesTheFormerKeeperReadsThem() {
        for (var address :
                List.of(
                        "/trees/%d",
                        "/trees/%d/change",
                        "/trees/%d/passport",
                        "/api/v1/trees/%d",
                        "/api/v1/trees/%d/earlier-words",
                        "/api/v1/trees/%d/record?form=JSON")) {
            assertThat(school.as(Who.REGISTRAR).get(address.formatted(tree.id())).asString())
                    .as(address)
                    .contains(mark);
        }
        assertThat(trees.earlierWords(school.actor(Who.REGISTRAR), tree.id()))
                .extracting(EarlierWords::words)
                .containsExactly("first " + mark);
        var course =
                school.as(Who.REGISTRAR)
                        .get(
                                "/api/v1/courses/%d/record?form=JSON"
                                        .formatted(school.otherCourse().id()));
        assertThat(course.asString()).contains(mark, school.person(Who.STUDENT).name() + "\"");
    }

    private NewTree said(Tree like, String origin, String note) {
        return new NewTree(
                like.label(),
                like.species(),
                like.keeperId(),
                like.siteId(),
                like.cameOn(),
                origin,
                note);
    }
}
