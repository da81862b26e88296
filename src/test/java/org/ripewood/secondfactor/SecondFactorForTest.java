package org.ripewood.secondfactor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.people.Person;
import org.ripewood.platform.Role;

@Tag("fast")
class SecondFactorForTest {

    @ParameterizedTest
    @CsvSource({
        "NONE, false, false, false",
        "REGISTRARS, true, false, false",
        "INSTRUCTORS, true, true, false",
        "EVERYBODY, true, true, true",
    })
    void whoIsMeant(
            SecondFactorFor wanted, boolean registrar, boolean instructor, boolean student) {
        assertThat(wanted.includes(person(Role.REGISTRAR))).isEqualTo(registrar);
        assertThat(wanted.includes(person(Role.INSTRUCTOR))).isEqualTo(instructor);
        assertThat(wanted.includes(person(Role.STUDENT))).isEqualTo(student);
        assertThat(wanted.includes(person(Role.STUDENT, Role.REGISTRAR))).isEqualTo(registrar);
    }

    private static Person person(Role... roles) {
        return new Person(1, 0, "Enna Rell", "enna", Set.of(roles), true);
    }
}
