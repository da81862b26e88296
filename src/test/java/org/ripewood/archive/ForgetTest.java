package org.ripewood.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.accounts.CalendarLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.assess.Assessments;
import org.ripewood.assess.NewSkillJudgement;
import org.ripewood.people.NewPerson;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.Standings;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** A person's record goes out to them, and they can be forgotten. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ForgetTest {

    private static final String NOTE = "zither-note";
    private static int count;

    @Inject School school;
    @Inject PersonRegistration register;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Trees trees;
    @Inject Observations observing;
    @Inject HandOvers handOvers;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject Assessments assessments;
    @Inject CalendarLinks links;
    @Inject Photos photos;
    @Inject KeptFiles files;
    @Inject Archive archive;
    @Inject DataSource database;
    @Inject SecondFactors factors;

    private School.Group group;
    private Actor registrar;
    private Actor person;
    private String name;
    private String login;
    private Tree tree;
    private Photo own;
    private Photo others;

    @BeforeEach
    void plant() {
        group = school.newGroup();
        registrar = school.person("Rae Registrar", Role.REGISTRAR);
        name = "Zelda Zithermark " + ++count;
        login = "zithermark-" + count;
        var entered =
                register.enter(
                        registrar,
                        new NewPerson(name, login, "long enough a password", Set.of(Role.STUDENT)));
        person = new Actor(entered.id(), entered.roles());
        school.join(group, person, Role.STUDENT);
        tree =
                trees.enter(
                        person,
                        new NewTree(
                                "Maple of the long bed",
                                "acer_palmatum",
                                person.personId(),
                                school.tree(group.student(), group.student(), "acer_palmatum")
                                        .siteId(),
                                School.TODAY.minusYears(3),
                                NOTE + " origin",
                                NOTE + " tree"));
        trees.change(
                person,
                tree.id(),
                tree.version(),
                new NewTree(
                        tree.label(),
                        tree.species(),
                        tree.keeperId(),
                        tree.siteId(),
                        tree.cameOn(),
                        NOTE + " origin",
                        NOTE + " tree, said anew"));
        observe(person, NOTE + " seen");
        observe(group.instructor(), "told by " + name + " at the bench");
        school.see(group.instructor(), tree, "vigour_index", "80");
        school.see(person, tree, "soil_moist", "yes", School.TODAY);
        observe(person, NOTE + " again");
        var step =
                assigner.assign(
                        group.instructor(),
                        tree.id(),
                        new NewAssignment("pest_control", null, null, null, null));
        reports.report(
                person,
                step.id(),
                step.version(),
                new NewReport(
                        School.TODAY,
                        "3 scales left on 20 shoots, " + NOTE + " done",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
        assessments.judge(
                group.instructor(),
                person.personId(),
                new NewSkillJudgement("wiring-branches", true, School.TODAY, NOTE + " of them"));
        links.make(person);
        own = photograph(person, NOTE + " from the path", 64);
        others = photograph(group.instructor(), "roots, by the instructor", 32);
    }

    private Photo photograph(Actor by, String caption, int widthPx) {
        return photos.add(
                by,
                tree.id(),
                new NewPhoto(School.TODAY, Viewpoint.FRONT, caption, null, null),
                new ByteArrayInputStream(Pictures.jpeg(Pictures.quarters(widthPx, 40))));
    }

    private void observe(Actor by, String note) {
        observing.observe(
                by,
                tree.id(),
                new NewObservation(
                        "pest_level",
                        "3",
                        School.TODAY.minusDays(2),
                        note,
                        null,
                        null,
                        null,
                        null));
    }

    @Test
    void whoeverStillKeepsTreesIsNotForgotten() {
        assertThatThrownBy(this::forget)
                .isInstanceOf(Refused.class)
                .hasMessageContaining(name + " still keeps Maple of the long bed");
        assertThat(peopleUnchecked.get(person.personId()).name()).isEqualTo(name);
    }

    @Test
    void nothingOfAForgottenPersonIsLeftAnywhere() throws SQLException {
        handOn();
        assertThat(found(NOTE)).isNotEmpty();
        assertThat(found(name)).contains("person.name", "decision.standing", "observation.note");
        var told = archive.forgetting(registrar, person.personId());
        assertThat(told.words()).containsEntry("observation", 2L).containsEntry("stepReport", 1L);
        forget();
        assertThat(found(NOTE)).isEmpty();
        assertThat(found(name)).isEmpty();
        assertThat(found(login)).isEmpty();
        var after = peopleUnchecked.get(person.personId());
        assertThat(after.name()).isEqualTo("Former member " + person.personId());
        assertThat(after.active()).isFalse();
        assertThat(after.roles()).isEmpty();
        assertThat(peopleUnchecked.members(group.course().id(), Role.STUDENT))
                .noneMatch(member -> member.id() == person.personId());
    }

    @Test
    void theirSecondFactorAndVisitsAreGone() throws SQLException {
        handOn();
        factors.begin(person);
        try (var connection = database.getConnection()) {
            for (var row :
                    List.of(
                            "person_visit values (%d, current_timestamp, current_timestamp)",
                            "recovery_code values (nextval('recovery_code_seq'), %d, 'A', 'x', null)",
                            "half_sign_in values (nextval('half_sign_in_seq'), %1$d, 'of %1$d',"
                                    + " current_timestamp)")) {
                SecondSchool.run(connection, "insert into " + row.formatted(person.personId()));
            }
            forget();
            for (var table :
                    List.of("second_factor", "recovery_code", "half_sign_in", "person_visit")) {
                assertThat(
                                SecondSchool.text(
                                        connection,
                                        "select count(*) from %s where person_id = %d"
                                                .formatted(table, person.personId())))
                        .as(table)
                        .isEqualTo("0");
            }
        }
    }

    @Test
    void theRecordOfTheTreeStays() throws SQLException {
        handOn();
        var before = standings.of(group.instructor(), tree.id(), School.TODAY).techniques();
        forget();
        var after = standings.of(group.instructor(), tree.id(), School.TODAY).techniques();
        assertThat(after).hasSameSizeAs(before);
        for (int at = 0; at < before.size(); at++) {
            assertThat(after.get(at).verdict()).isEqualTo(before.get(at).verdict());
        }
        assertThat(
                        observing
                                .list(
                                        group.instructor(),
                                        tree.id(),
                                        new org.ripewood.platform.PageRequest(0, 50))
                                .items())
                .anyMatch(seen -> seen.byId() == person.personId());
    }

    @Test
    void forgettingTwiceChangesNothing() {
        handOn();
        forget();
        var once = peopleUnchecked.get(person.personId());
        assertThat(archive.forgetting(registrar, person.personId()).forgotten()).isTrue();
        forget();
        assertThat(peopleUnchecked.get(person.personId())).isEqualTo(once);
    }

    @Test
    void onlyARegistrarForgetsAndNeverThemselves() {
        assertThatThrownBy(() -> archive.forgetting(group.instructor(), person.personId()))
                .hasMessageContaining("Only a registrar");
        assertThatThrownBy(() -> archive.forget(registrar, registrar.personId(), 0))
                .hasMessageContaining("cannot forget yourself");
        assertThatThrownBy(() -> archive.forget(registrar, person.personId(), 99))
                .hasMessageContaining("was changed");
    }

    @Test
    void aPersonsRecordHasAllOfThemAndNobodyElsesName() throws IOException {
        var file = file(person, person.personId());
        assertThat(file)
                .contains("\"scope\":\"PERSON\"", name, login)
                .contains(NOTE + " origin", NOTE + " seen", NOTE + " done", NOTE + " of them")
                .contains("Maple of the long bed", "\"table\":\"membership\"")
                .doesNotContain("Ines Instructor", "Stan Student", "$2a$");
        assertThat(file(registrar, person.personId())).contains(NOTE + " seen");
        for (var other : List.of(group.instructor(), group.student())) {
            assertThatThrownBy(() -> archive.person(other, person.personId(), RecordForm.JSON))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("There is no person");
        }
    }

    @Test
    void thePhotosAForgottenPersonSentAreDeletedAndOthersStay() throws SQLException, IOException {
        handOn();
        assertThat(archive.forgetting(registrar, person.personId()).photos()).isEqualTo(1);
        var before = files.all();
        var gone = List.of(kept(own, "file_key"), kept(own, "thumbnail_key"));
        assertThat(before).containsAll(gone);
        forget();
        assertThat(files.all())
                .doesNotContainAnyElementsOf(gone)
                .hasSize(before.size() - 2)
                .contains(kept(others, "file_key"));
        var mark = photos.get(group.instructor(), own.id());
        assertThat(mark.removed()).isTrue();
        assertThat(mark.removedById()).isEqualTo(registrar.personId());
        assertThat(mark.caption()).isNull();
        assertThat(photos.get(group.instructor(), others.id())).isEqualTo(others);
        assertThat(archive.forgetting(registrar, person.personId()).photos()).isZero();
    }

    /** A school that forgot them before photos were part of it does so once more. */
    @Test
    void whoWasForgottenButForPhotosIsNotForgottenYet() throws SQLException, IOException {
        handOn();
        try (var connection = database.getConnection()) {
            SecondSchool.run(
                    connection,
                    "update person set login = 'former-%1$d' where id = %1$d"
                            .formatted(person.personId()));
        }
        assertThat(archive.forgetting(registrar, person.personId()).forgotten()).isFalse();
        forget();
        assertThat(archive.forgetting(registrar, person.personId()).forgotten()).isTrue();
        assertThat(photos.get(group.instructor(), own.id()).removed()).isTrue();
    }

    @Test
    void whoStillKeepsTreesKeepsTheirPhotos() throws SQLException, IOException {
        assertThatThrownBy(this::forget).isInstanceOf(Refused.class);
        assertThat(files.all()).contains(kept(own, "file_key"));
    }

    private Path kept(Photo photo, String column) throws SQLException {
        try (var connection = database.getConnection()) {
            return files.of(
                    SecondSchool.text(
                            connection,
                            "select %s from photo where id = %d".formatted(column, photo.id())));
        }
    }

    @Test
    void aPersonsRecordHasTheirTreesPhotosAndThoseTheyTook() throws IOException {
        var keeping = zip(person);
        assertThat(Zips.record(keeping))
                .contains(own.sha256(), others.sha256(), NOTE + " from the path")
                .doesNotContain("Ines Instructor");
        assertThat(widths(keeping)).containsExactly(64, 32);
        handOn();
        var after = zip(person);
        assertThat(Zips.record(after))
                .contains(own.sha256())
                .doesNotContain(others.sha256(), "by the instructor");
        assertThat(widths(after)).containsExactly(64);
    }

    private byte[] zip(Actor by) throws IOException {
        try (var in = archive.person(by, by.personId(), RecordForm.ZIP)) {
            return in.readAllBytes();
        }
    }

    private static List<Integer> widths(byte[] zip) {
        return Zips.entries(zip).entrySet().stream()
                .filter(entry -> entry.getKey().startsWith("photos/"))
                .map(entry -> Pictures.decoded(entry.getValue()).getWidth())
                .toList();
    }

    private String file(Actor by, long personId) throws IOException {
        try (var in = archive.person(by, personId, RecordForm.JSON)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private void handOn() {
        handOvers.handOver(
                group.instructor(),
                tree.id(),
                trees.get(group.instructor(), tree.id()).version(),
                new HandOver(group.student().personId(), School.TODAY));
    }

    private void forget() {
        archive.forget(
                registrar, person.personId(), peopleUnchecked.get(person.personId()).version());
    }

    /** Every column of text of the whole database that has it. */
    private List<String> found(String marker) throws SQLException {
        var where = new ArrayList<String>();
        try (var connection = database.getConnection()) {
            var columns = new ArrayList<String[]>();
            try (var statement = connection.createStatement();
                    var rows =
                            statement.executeQuery(
                                    "select c.table_name, c.column_name from"
                                            + " information_schema.columns c join"
                                            + " information_schema.tables t on t.table_schema ="
                                            + " c.table_schema and t.table_name = c.table_name where"
                                            + " t.table_type = 'BASE TABLE' and lower(c.table_schema)"
                                            + " = 'public' and upper(c.data_type) like '%CHAR%'")) {
                while (rows.next()) {
                    columns.add(new String[] {rows.getString(1), rows.getString(2)});
                }
            }
            assertThat(columns).hasSizeGreaterThan(50);
            for (var column : columns) {
                var query =
                        "select count(*) from %s where position(? in \"%s\") > 0"
                                .formatted(column[0], column[1]);
                try (var asking = connection.prepareStatement(query)) {
                    asking.setString(1, marker);
                    try (var rows = asking.executeQuery()) {
                        rows.next();
                        if (rows.getLong(1) > 0) {
                            where.add(column[0] + "." + column[1]);
                        }
                    }
                }
            }
        }
        return where;
    }
}
