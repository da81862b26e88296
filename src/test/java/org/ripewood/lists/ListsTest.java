package org.ripewood.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.Logged;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.standing.EarlierWorks;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/** Lists are looked through by line and column, and entered whole or in part. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ListsTest {

    private static final PageRequest ALL = new PageRequest(0, 100);
    private static int count;

    @Inject School school;
    @Inject Lists lists;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject EarlierWorks earlierWorks;
    @Inject Branches branchBook;
    @Inject Containers containerBook;

    private School.Group group;
    private Actor registrar;
    private String keeper;
    private String site;

    @BeforeEach
    void open() {
        group = school.newGroup();
        registrar = school.person("Rae Registrar", Role.REGISTRAR);
        keeper = peopleUnchecked.get(group.student().personId()).login();
        var tree = school.tree(group.student(), group.student(), "acer_palmatum");
        site =
                treeSites.list(group.instructor()).stream()
                        .filter(each -> each.id() == tree.siteId())
                        .findFirst()
                        .orElseThrow()
                        .name();
        count++;
    }

    private ListOutcome tree(String rows, Choice choice) {
        return lists.take(
                group.instructor(),
                ListKind.TREES,
                "label,species,keeper,site,came_on,origin,note\n"
                        + rows.replace("KEEPER", keeper).replace("SITE", site),
                choice);
    }

    private List<String> labels() {
        return trees
                .list(group.instructor(), group.student().personId(), null, ALL)
                .items()
                .stream()
                .map(tree -> tree.label())
                .toList();
    }

    @Test
    void aDryRunTellsAllAndEntersNothing() {
        var outcome =
                tree(
                        """
                        Dry one,acer_palmatum,KEEPER,SITE,2021-03-14,,
                        Dry two,acer_palmatun,KEEPER,SITE,2021-03-14,,
                        Dry three,acer_palmatum,KEEPER,SITE,14.3.2021,,
                        Dry four,acer_palmatum,KEEPER,SITE,2921-03-14,,
                        ,acer_palmatum,KEEPER,SITE,2021-03-14,,
                        """,
                        Choice.DRY_RUN);
        assertThat(outcome.rows()).isEqualTo(5);
        assertThat(outcome.entered()).isZero();
        assertThat(outcome.good()).extracting(ListOutcome.GoodRow::line).containsExactly(2);
        assertThat(outcome.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly("3 species", "4 came_on", "5 came_on", "6 label");
        assertThat(outcome.faults().get(0).message()).contains("Maybe “acer_palmatum”");
        assertThat(labels()).noneMatch(label -> label.startsWith("Dry"));
    }

    /**
     * What a trial would have entered in the audit goes with it, and nothing is left to warn of.
     */
    @Test
    void aTrialAndWhatIsEnteredEndWithoutAWarning() {
        try (var logged = new Logged()) {
            var rows = "Quiet one,acer_palmatum,KEEPER,SITE,2021-03-14,,\n";
            assertThat(tree(rows, Choice.DRY_RUN).good()).hasSize(1);
            assertThat(logged.of("org.hibernate.orm.session")).isEmpty();
            assertThat(tree(rows, Choice.ALL_OR_NOTHING).good()).hasSize(1);
            assertThat(logged.of("io.agroal.pool")).isEmpty();
        }
    }

    @Test
    void textsThatNoFormTakesNoListTakes() {
        var outcome =
                tree(
                        """
                        Dry\uFFFF,acer_palmatum,KEEPER,SITE,2021-03-14,,
                        \u3164,acer_palmatum,KEEPER,SITE,2021-03-14,,
                        "Dry
                        five",acer_palmatum,KEEPER,SITE,2021-03-14,,
                        """,
                        Choice.DRY_RUN);
        assertThat(outcome.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly("2 label", "3 label", "4 label");
    }

    @Test
    void allOrNothingEntersNothingWhereOneRowIsWrong() {
        var wrong =
                "Whole one,acer_palmatum,KEEPER,SITE,2021-03-14,,\nWhole two,none,KEEPER,SITE,2021-03-14,,";
        assertThat(tree(wrong, Choice.ALL_OR_NOTHING).entered()).isZero();
        assertThat(labels()).noneMatch(label -> label.startsWith("Whole"));
        assertThat(tree(wrong.replace("none", "acer_palmatum"), Choice.ALL_OR_NOTHING).entered())
                .isEqualTo(2);
        assertThat(labels()).contains("Whole one", "Whole two");
    }

    @Test
    void onlyTheGoodRowsGoInWhenThatIsChosen() {
        var outcome =
                tree(
                        """
                        Good one,acer_palmatum,KEEPER,SITE,2021-03-14,,
                        Bad one,none,KEEPER,SITE,2021-03-14,,
                        Good two,acer_palmatum,KEEPER,SITE,2021-03-14,,
                        """,
                        Choice.GOOD_ROWS);
        assertThat(outcome.entered()).isEqualTo(2);
        assertThat(labels()).contains("Good one", "Good two").doesNotContain("Bad one");
    }

    @Test
    void linesAreCountedThroughCellsOfSeveralLines() {
        var outcome =
                tree(
                        "Lines one,acer_palmatum,KEEPER,SITE,2021-03-14,,\"two,\nlines \"\"here\"\"\"\n\n"
                                + "Lines two,none,KEEPER,SITE,2021-03-14,,\n",
                        Choice.DRY_RUN);
        assertThat(outcome.good()).extracting(ListOutcome.GoodRow::line).containsExactly(2);
        assertThat(outcome.faults()).extracting(ListFault::line).containsExactly(5);
    }

    @Test
    void semicolonsAndAByteOrderMarkAreRead() {
        var text =
                "\uFEFFLabel;Species;Keeper;Site;Came on\r\nSemi, one;acer_palmatum;%s;%s;2021-03-14\r\n"
                        .formatted(keeper, site);
        assertThat(lists.take(registrar, ListKind.TREES, text, Choice.ALL_OR_NOTHING).entered())
                .isEqualTo(1);
        assertThat(labels()).contains("Semi, one");
    }

    @Test
    void aFormulaIsATextLikeAnyOther() {
        tree("=2+3,acer_palmatum,KEEPER,SITE,2021-03-14,+1,@home", Choice.ALL_OR_NOTHING);
        assertThat(labels()).contains("=2+3");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            textBlock =
                    """
                    label,species | 1 | keeper
                    label,species,keeper,site,came_on,lable | 1 | lable
                    label,species,keeper,site,came_on,label | 1 | label
                    label,species,keeper,site,came_on~a,b,c | 2 |
                    label,species,keeper,site,came_on~"a,b,c | 2 |
                    ~~ | 1 |
                    """)
    void aListThatCannotBeReadIsToldByLine(String text, int line, String column) {
        var outcome =
                lists.take(registrar, ListKind.TREES, text.replace('~', '\n'), Choice.GOOD_ROWS);
        assertThat(outcome.entered()).isZero();
        assertThat(outcome.faults())
                .anyMatch(
                        fault ->
                                fault.line() == line
                                        && fault.column().equals(column == null ? "" : column));
    }

    @Test
    void aLoginIsFoundTwiceInTheListAndInTheSchool() {
        var text =
                """
                name,login,roles,course
                One,list-new-%1$d,student,%2$s
                Two,list-new-%1$d,student,
                Three,%3$s,student instructor,
                Four,list-four-%1$d,studend,
                """
                        .formatted(count, group.course().name(), keeper);
        var outcome = lists.take(registrar, ListKind.PEOPLE, text, Choice.GOOD_ROWS);
        assertThat(outcome.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly("3 login", "4 login", "5 roles");
        assertThat(outcome.faults().get(0).message()).contains("line 2");
        assertThat(outcome.faults().get(2).message()).contains("Maybe “student”");
        assertThat(outcome.entered()).isEqualTo(1);
        var entered = peopleUnchecked.findByLogin("list-new-" + count).orElseThrow();
        assertThat(peopleUnchecked.members(group.course().id(), Role.STUDENT)).contains(entered);
    }

    @Test
    void readingsGoToTheTreeOfThatKeeper() {
        tree("Read one,acer_palmatum,KEEPER,SITE,2021-03-14,,", Choice.ALL_OR_NOTHING);
        var outcome =
                lists.take(
                        group.instructor(),
                        ListKind.READINGS,
                        """
                        tree,keeper,fact,value,observed_on,height_mm
                        Read one,%1$s,vigour_index,80,2026-02-18,
                        Read one,%1$s,trunk_diameter_mm,32.5,2026-02-18,40
                        Read onee,%1$s,vigour_index,80,2026-02-18,
                        Read one,%1$s,vigour_index,800,2026-02-18,
                        Read one,nobody,vigour_index,80,2026-02-18,
                        Read one,%1$s,trunk_diameter_mm,32.5,2026-02-18,"1,200"
                        """
                                .formatted(keeper),
                        Choice.GOOD_ROWS);
        assertThat(outcome.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly("4 tree", "5 value", "6 keeper", "7 height_mm");
        assertThat(outcome.faults().get(0).message()).contains("Maybe “Read one”");
        assertThat(outcome.faults().get(3).message()).contains("Maybe “1200” or “1.200”");
        assertThat(outcome.entered()).isEqualTo(2);
    }

    @Test
    void peopleAreForRegistrarsAndStudentsEnterNoLists() {
        assertThatThrownBy(
                        () -> lists.take(group.instructor(), ListKind.PEOPLE, "", Choice.DRY_RUN))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> lists.take(group.student(), ListKind.TREES, "", Choice.DRY_RUN))
                .isInstanceOf(Refused.class);
    }

    @Test
    void theSamplesHaveTheColumnsTheySay() {
        for (var kind : ListKind.values()) {
            var outcome = lists.take(registrar, kind, kind.sample(), Choice.DRY_RUN);
            assertThat(outcome.rows()).isGreaterThan(0);
            assertThat(outcome.faults()).noneMatch(fault -> fault.line() == 1);
        }
    }

    private ListOutcome past(ListKind kind, String header, String rows) {
        return lists.take(
                group.instructor(),
                kind,
                header + "\n" + rows.replace("KEEPER", keeper),
                Choice.GOOD_ROWS);
    }

    @Test
    void aPastIsEnteredRowByRow() {
        tree("Past one,acer_palmatum,KEEPER,SITE,2024-03-14,,", Choice.ALL_OR_NOTHING);
        var works =
                past(
                        ListKind.WORKS,
                        "tree,keeper,technique,done_on,foliage_percent,root_percent,counts_as_done,note",
                        """
                        Past one,KEEPER,trunk_chop,2022-02-18,70,,yes,at the nursery
                        Past one,KEEPER,half_bare_root,2023-03-01,,30,,
                        Past one,KEEPER,half_bare_root,2023-03-01,,30,,
                        Past one,KEEPER,half_bare_rot,2023-03-02,,,,
                        Past one,KEEPER,feed_up,1899-05-02,,,,
                        Past one,KEEPER,feed_up,2023-05-02,170,,,
                        Past one,KEEPER,feed_up,2023-05-03,,,perhaps,
                        """);
        assertThat(works.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly(
                        "4 ", "5 technique", "6 done_on", "7 foliage_percent", "8 counts_as_done");
        var branches =
                past(
                        ListKind.BRANCHES,
                        "tree,keeper,name,role,height_mm,entered_on,diameter_mm,trunk_mm,measured_on",
                        """
                        Past one,KEEPER,first left,primary,120,2024-03-20,9.5,41,2024-04-01
                        Past one,KEEPER,back,primery,90,2024-03-20,,,
                        Past one,KEEPER,leader,leader,,,12,,
                        """);
        assertThat(branches.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly("3 role", "4 measured_on");
        assertThat(branches.faults().get(0).message()).contains("Maybe “primary”");
        var containers =
                past(
                        ListKind.CONTAINERS,
                        "tree,keeper,kind,since,description,litres",
                        """
                        Past one,KEEPER,nursery,2021-03-14,,5
                        Past one,KEEPER,pot,2024-03-14,,5
                        """);
        assertThat(containers.faults())
                .extracting(fault -> fault.line() + " " + fault.column())
                .containsExactly("3 kind");
        var id =
                trees
                        .list(group.instructor(), group.student().personId(), null, ALL)
                        .items()
                        .stream()
                        .filter(tree -> tree.label().equals("Past one"))
                        .findFirst()
                        .orElseThrow()
                        .id();
        assertThat(earlierWorks.of(group.instructor(), id))
                .extracting(told -> told.work().doneOn() + " " + told.work().work().technique())
                .containsExactly("2023-03-01 half_bare_root", "2022-02-18 trunk_chop");
        assertThat(branchBook.of(group.instructor(), id))
                .singleElement()
                .satisfies(
                        branch -> {
                            assertThat(branch.diameterMm()).isEqualTo(9.5);
                            assertThat(branch.trunkAtNodeMm()).isEqualTo(41);
                        });
        assertThat(containerBook.of(group.instructor(), id))
                .extracting(stay -> stay.since() + " " + stay.kind())
                .containsExactly("2021-03-14 nursery");
    }

    /** The samples are what people begin with. */
    @Test
    void theSamplesHaveTheirKindsColumns() {
        for (var kind : ListKind.values()) {
            var columns = new ArrayList<>(kind.needed());
            columns.addAll(kind.more());
            assertThat(kind.sample().lines().findFirst().orElseThrow().split(",", -1))
                    .as("%s", kind)
                    .containsExactlyElementsOf(columns);
        }
    }
}
