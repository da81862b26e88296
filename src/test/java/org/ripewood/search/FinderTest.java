package org.ripewood.search;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.Visitor;

/** Who finds what: never a tree, a person or a word beyond their reach. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class FinderTest {

    @Inject School school;
    @Inject Trees trees;
    @Inject People people;
    @Inject Finder finder;

    private School.Group group;
    private School.Group foreign;
    private Tree tree;
    private Tree theirs;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        foreign = school.newGroup();
        tree = named(group, "Érable ondulé", "hidden pearwood");
        theirs = named(foreign, "Zelkova quickthorn", "hidden pearwood");
    }

    private Tree named(School.Group of, String label, String note) {
        var like = school.tree(of.instructor(), of.student(), "acer_palmatum");
        return trees.change(
                of.student(),
                like.id(),
                like.version(),
                new NewTree(
                        label + " " + like.id(),
                        like.species(),
                        like.keeperId(),
                        like.siteId(),
                        like.cameOn(),
                        null,
                        note));
    }

    private List<String> found(Actor who, String words, Kind kind) {
        return finder.find(who, words).groups().stream()
                .filter(of -> of.kind() == kind)
                .flatMap(of -> of.hits().stream())
                .map(Hit::key)
                .toList();
    }

    @Test
    void aTreeIsFoundByPartsOfItsNameItsSpeciesAndItsKeeper() {
        var key = Long.toString(tree.id());
        var keeper = people.name(group.student().personId());
        for (var words : List.of("erable", "ONDUL", "érable palmatum", "japanese " + keeper)) {
            assertThat(found(group.student(), words, Kind.TREE)).as(words).containsExactly(key);
            assertThat(found(group.instructor(), words, Kind.TREE)).as(words).contains(key);
        }
    }

    /** Not by its name, not by a slip of it, and not by what was written of it. */
    @Test
    void nobodyFindsWhatIsBeyondTheirReach() {
        for (var who : List.of(group.student(), group.instructor())) {
            for (var words : List.of("quickthorn", "quikthorn", "pearwood", "zelkova quick")) {
                var all = finder.find(who, words);
                assertThat(found(who, words, Kind.TREE)).as(words).isEmpty();
                assertThat(String.valueOf(all.maybe())).as(words).doesNotContain("quickthorn");
                assertThat(finder.all(who, words, Kind.TREE, new PageRequest(0, 50)).total())
                        .isZero();
            }
            var stranger = people.name(foreign.student().personId());
            assertThat(found(who, stranger, Kind.PERSON)).isEmpty();
            assertThat(found(who, foreign.course().name(), Kind.COURSE))
                    .doesNotContain("" + foreign.course().id());
        }
        assertThat(found(foreign.student(), "pearwood", Kind.TREE)).isEmpty();
        assertThat(found(foreign.student(), "quickthorn", Kind.TREE))
                .containsExactly("" + theirs.id());
    }

    @Test
    void aRegistrarFindsEverybodyAndEveryTree() {
        var office = school.person("Rika Registrar", Role.REGISTRAR);
        assertThat(found(office, "quickthorn " + theirs.id(), Kind.TREE))
                .containsExactly("" + theirs.id());
        assertThat(found(office, people.name(foreign.student().personId()), Kind.PERSON))
                .contains("" + foreign.student().personId());
    }

    @Test
    void fellowsAreFoundByNameAndCoursesByTheirPageForTheReader() {
        assertThat(found(group.student(), people.name(group.instructor().personId()), Kind.PERSON))
                .contains("" + group.instructor().personId());
        assertThat(pages(group.student())).containsValue("/courses/%d/about".formatted(courseId()));
        assertThat(pages(group.instructor())).containsValue("/courses/" + courseId());
    }

    private long courseId() {
        return group.course().id();
    }

    private Map<String, String> pages(Actor who) {
        return finder.find(who, group.course().name()).groups().stream()
                .filter(of -> of.kind() == Kind.COURSE)
                .flatMap(of -> of.hits().stream())
                .collect(Collectors.toMap(Hit::key, Hit::page));
    }

    @Test
    void ofEachKindTenAreToldAndAllCanBeTurnedThrough() {
        var found = finder.find(group.student(), "e");
        assertThat(found.groups())
                .allSatisfy(of -> assertThat(of.hits()).hasSizeLessThanOrEqualTo(10));
        var words = finder.all(group.student(), "r", Kind.WORD, new PageRequest(0, 4));
        var next = finder.all(group.student(), "r", Kind.WORD, new PageRequest(1, 4));
        assertThat(words.items()).hasSize(4).doesNotContainAnyElementsOf(next.items());
        assertThat(words.total()).isEqualTo(next.total()).isGreaterThan(4);
        var beyond = new PageRequest(1_000_000, 200);
        assertThat(finder.all(group.student(), "r", Kind.WORD, beyond).items()).isEmpty();
    }

    @Test
    void aSlipIsPutRight() {
        assertThat(finder.find(group.student(), "nebrai").maybe()).isEqualTo("nebari");
        assertThat(finder.find(group.student(), "ondulr").maybe()).isEqualTo("ondule");
        assertThat(finder.find(group.student(), "nebari").maybe()).isNull();
        assertThat(finder.find(group.student(), "xyzzyq").maybe()).isNull();
    }

    @Test
    void oddQuestionsAreAnsweredByPageAndApi() {
        var pupil = Visitor.of(people, group.student());
        for (var odd :
                List.of(
                        "%25",
                        "%27%20or%201%3D1%20--",
                        "%3Cscript%3Ealert(1)%3C/script%3E",
                        "%F0%9F%8C%B2",
                        "%E2%80%AE%00",
                        "%5C%22%29",
                        "_",
                        "")) {
            for (var at : List.of("/search?q=", "/search?kind=tree&q=", "/api/v1/search?q=")) {
                var answer = pupil.get(at + odd);
                assertThat(answer.statusCode()).as(at + odd).isIn(200, 400);
                assertThat(answer.asString()).as(at + odd).doesNotContain("<script>alert");
            }
        }
        var longest = "a".repeat(80);
        assertThat(pupil.get("/search?q=" + longest).statusCode()).isEqualTo(200);
        for (var at : List.of("/search?q=", "/api/v1/search?q=", "/api/v1/search/tree?q=")) {
            var answer = pupil.get(at + longest + "a");
            assertThat(answer.statusCode()).as(at).isEqualTo(400);
            assertThat(answer.asString()).as(at).contains("at most 80 letters");
        }
        assertThat(pupil.get("/search?q=a&kind=lost").statusCode()).isEqualTo(404);
        assertThat(pupil.get("/search?q=a&kind=tree&page=-1").statusCode()).isEqualTo(400);
        assertThat(pupil.get("/api/v1/search/lost?q=a").statusCode()).isEqualTo(404);
        assertThat(pupil.get("/api/v1/search/tree?q=a&size=0").statusCode()).isEqualTo(400);
        assertThat(pupil.get("/api/v1/search?q=erable").asString())
                .contains("\"page\":\"/trees/%d\"".formatted(tree.id()));
    }
}
