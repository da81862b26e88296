package org.ripewood.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.Database;
import org.ripewood.people.NewPerson;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** The way from an empty school to its first registrar; in a database of its own. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SetUpTest.EmptySchool.class)
class SetUpTest {

    public static class EmptySchool implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Database.named("empty-school");
        }
    }

    @Inject PersonRegistration register;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject SetUpCode code;

    @Test
    void theCodeFromTheLogMakesTheFirstRegistrarAndNobodyAfter() {
        var first =
                new NewPerson(
                        "Vera Holm", "vera", "quite a long password", Set.of(Role.INSTRUCTOR));
        var offered = code.fresh();
        assertThat(offered).matches("([A-Z2-9]{4}-){3}[A-Z2-9]{4}");
        assertThat(register.schoolIsEmpty()).isTrue();

        var wrong = refused("AAAA-AAAA-AAAA-AAAA", first);
        assertThat(wrong.problem().faults()).extracting(Fault::field).containsExactly("code");
        assertThat(refused("", first).problem().status()).isEqualTo(400);
        assertThat(register.schoolIsEmpty()).isTrue();

        var registrar = register.setUp(offered, first);
        assertThat(registrar.roles()).containsExactlyInAnyOrder(Role.REGISTRAR, Role.INSTRUCTOR);
        assertThat(peopleUnchecked.get(registrar.id()).roles()).contains(Role.REGISTRAR);
        assertThat(register.schoolIsEmpty()).isFalse();

        var second =
                new NewPerson("Nobody", "second", "quite a long password", Set.of(Role.REGISTRAR));
        assertThat(refused(offered, second).problem().status()).isEqualTo(409);
        assertThat(peopleUnchecked.findByLogin("second")).isEmpty();
    }

    private Refused refused(String offered, NewPerson person) {
        return catchThrowableOfType(Refused.class, () -> register.setUp(offered, person));
    }
}
