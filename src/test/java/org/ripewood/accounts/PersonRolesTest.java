package org.ripewood.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.Database;
import org.ripewood.audit.Audit;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Roles given and taken; in a database of its own, where the registrars can be counted. */
@Tag("one-database")
@QuarkusTest
@TestProfile(PersonRolesTest.OwnSchool.class)
class PersonRolesTest {

    public static class OwnSchool implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Database.named("roles-school");
        }
    }

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));

    @Inject PersonRoles roles;
    @Inject PersonRegistration register;
    @Inject PasswordLinks links;
    @Inject PeopleUnchecked people;
    @Inject Courses courses;
    @Inject Audit audit;
    @Inject Today today;
    @Inject People everybody;

    private Person registrar;

    @BeforeEach
    void oneRegistrar() {
        registrar = enter("Rena Hollis", Role.REGISTRAR);
    }

    @Test
    void aRegistrarTeachesFromTheNextRequestOn() {
        var both = Set.of(Role.REGISTRAR, Role.INSTRUCTOR);

        var changed = set(registrar, both);

        assertThat(changed.roles()).isEqualTo(both);
        assertThat(changed.version()).isGreaterThan(registrar.version());
        assertThat(people.get(registrar.id()).roles()).isEqualTo(both);
        assertThat(audit.latestChange("person", registrar.id())).isPresent();
        var course = courses.open(OFFICE, course("Bench of " + registrar.id(), 30));
        courses.join(OFFICE, course.id(), registrar.id(), Role.INSTRUCTOR);
        assertThat(people.members(course.id(), Role.INSTRUCTOR)).containsExactly(changed);
    }

    @Test
    void theSameRolesAgainChangeNothing() {
        assertThat(set(registrar, Set.of(Role.REGISTRAR))).isEqualTo(registrar);
    }

    @Test
    void onlyARegistrarGivesRolesAndOnlyToWhatTheyHaveSeen() {
        var teacher = enter("Vera Holm", Role.INSTRUCTOR);
        var herself = new Actor(teacher.id(), teacher.roles());
        var all = Set.of(Role.values());

        assertThat(refused(() -> roles.set(herself, teacher.id(), teacher.version(), all)).status())
                .isEqualTo(403);
        assertThat(refused(() -> roles.get(herself, registrar.id())).status()).isEqualTo(403);
        assertThat(refused(() -> roles.set(OFFICE, teacher.id(), 99, all)).status()).isEqualTo(412);
        assertThat(refused(() -> roles.set(OFFICE, 999_999, 0, all)).status()).isEqualTo(404);
        assertThat(refused(() -> set(teacher, Set.of())).status()).isEqualTo(400);
        assertThat(people.get(teacher.id()).roles()).containsExactly(Role.INSTRUCTOR);
    }

    @Test
    void whoTeachesOrAttendsKeepsTheRoleUntilTheMembershipEnds() {
        var person = enter("Ivo Brand", Role.INSTRUCTOR, Role.STUDENT);
        var teaches = courses.open(OFFICE, course("Wiring " + person.id(), 30));
        var attends = courses.open(OFFICE, course("Potting " + person.id(), 30));
        courses.join(OFFICE, teaches.id(), person.id(), Role.INSTRUCTOR);
        courses.join(OFFICE, attends.id(), person.id(), Role.STUDENT);

        assertThat(refused(() -> set(person, Set.of(Role.STUDENT))))
                .satisfies(problem -> assertThat(problem.status()).isEqualTo(409))
                .satisfies(
                        problem ->
                                assertThat(problem.detail())
                                        .isEqualTo(
                                                "Ivo Brand still teaches “%s”."
                                                        .formatted(teaches.name())));
        assertThat(refused(() -> set(person, Set.of(Role.INSTRUCTOR))).detail())
                .isEqualTo("Ivo Brand still attends “%s”.".formatted(attends.name()));

        var office = new Actor(registrar.id(), registrar.roles());
        courses.leave(office, teaches.id(), person.id(), today.date());
        assertThat(set(person, Set.of(Role.STUDENT)).roles()).containsExactly(Role.STUDENT);
    }

    @Test
    void aCourseThatIsOverHoldsNobody() {
        var person = enter("Anselm Reet", Role.INSTRUCTOR, Role.STUDENT);
        var over = courses.open(OFFICE, course("Old " + person.id(), -1));
        courses.join(OFFICE, over.id(), person.id(), Role.INSTRUCTOR);

        assertThat(set(person, Set.of(Role.STUDENT)).roles()).containsExactly(Role.STUDENT);
    }

    @Test
    void theLastRegistrarWhoCanSignInStays() {
        leaveOnly(registrar);
        links.invite(OFFICE, new NewGuest("Not Yet", unique("invited"), Set.of(Role.REGISTRAR)));
        var blocked = enter("Away Now", Role.REGISTRAR);
        register.setActive(OFFICE, blocked.id(), blocked.version(), false);

        var problem = refused(() -> set(registrar, Set.of(Role.STUDENT)));
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.detail()).contains("Rena Hollis is the only registrar");
        assertThat(
                        refused(
                                        () ->
                                                register.setActive(
                                                        OFFICE,
                                                        registrar.id(),
                                                        registrar.version(),
                                                        false))
                                .status())
                .isEqualTo(409);

        enter("Second Office", Role.REGISTRAR);
        assertThat(set(registrar, Set.of(Role.STUDENT)).roles()).containsExactly(Role.STUDENT);
    }

    @Test
    void ofTwoWhoTakeTheRoleFromEachOtherAtOnceOneStays() throws Exception {
        var second = enter("Second Office", Role.REGISTRAR);
        leaveOnly(registrar, second);
        var pool = Executors.newFixedThreadPool(2);
        try {
            var both = new ArrayList<Callable<Boolean>>();
            for (var person : List.of(registrar, second)) {
                both.add(
                        () -> {
                            try {
                                set(person, Set.of(Role.STUDENT));
                                return true;
                            } catch (Refused refused) {
                                return false;
                            }
                        });
            }
            for (var done : pool.invokeAll(both)) {
                done.get();
            }
        } finally {
            pool.shutdownNow();
        }
        assertThat(List.of(people.get(registrar.id()), people.get(second.id())))
                .filteredOn(person -> person.roles().contains(Role.REGISTRAR))
                .hasSize(1);
    }

    /** Makes students of all other registrars. */
    private void leaveOnly(Person... kept) {
        var ids = List.of(kept).stream().map(Person::id).toList();
        for (var other : registrars()) {
            if (!ids.contains(other.id())) {
                var rest = EnumSet.of(Role.STUDENT);
                rest.addAll(other.roles());
                rest.remove(Role.REGISTRAR);
                roles.set(OFFICE, other.id(), other.version(), rest);
            }
        }
    }

    private List<Person> registrars() {
        return everybody.everybody(OFFICE, new PageRequest(0, 100), "").items().stream()
                .filter(person -> person.roles().contains(Role.REGISTRAR))
                .toList();
    }

    private Person set(Person person, Set<Role> wanted) {
        return roles.set(OFFICE, person.id(), person.version(), wanted);
    }

    private static Problem refused(ThrowingCallable call) {
        var refused = catchThrowableOfType(Refused.class, call);
        assertThat(refused).as("it is refused").isNotNull();
        return refused.problem();
    }

    private Person enter(String name, Role... as) {
        return register.enter(
                OFFICE, new NewPerson(name, unique("p"), "quite a long password", Set.of(as)));
    }

    private static String unique(String start) {
        return start + NEXT.incrementAndGet() + ".roles";
    }

    private NewCourse course(String name, int lastDayFromNow) {
        return new NewCourse(
                name, today.date().minusDays(60), today.date().plusDays(lastDayFromNow));
    }
}
