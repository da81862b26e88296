package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.security.Authenticated;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Who may do what: every address of the house, for each role, on a tree, course, session or step of
 * the student's, which is their own, their instructor's to teach, or somebody else's.
 *
 * <p>A signed-in person who asks for what is out of reach is answered as if it were not there.
 */
@Tag("one-database")
@QuarkusTest
class RoleTableTest {

    @Inject School opening;

    private School school;
    private Calls calls;

    @BeforeEach
    void open() {
        school = opening.open();
        calls = new Calls(school);
    }

    @Test
    void everyAddressHasItsRow() {
        assertThat(new TreeSet<>(RoleTable.rows().keySet()))
                .isEqualTo(new TreeSet<>(endpoints().keySet()));
    }

    @Test
    void everyRoleIsAnsweredAsTheTableSays() {
        var endpoints = endpoints();
        var wrong = new ArrayList<String>();
        RoleTable.rows()
                .forEach(
                        (address, expected) -> {
                            var found = answers(endpoints.get(address));
                            if (!found.equals(expected)) {
                                wrong.add(
                                        "%s%n  expected %s%n  found    %s"
                                                .formatted(address, expected, found));
                            }
                        });
        assertThat(wrong).isEmpty();
    }

    /** OWASP ASVS 5.0.0, 6.3.3: the password alone opens nothing to who has a second factor. */
    @Test
    void aSignInThatWaitsForItsCodeIsAnsweredLikeNobody() {
        var endpoints = endpoints();
        school.nobodyWaitsForACode();
        try {
            RoleTable.rows()
                    .forEach(
                            (address, expected) -> {
                                var call = calls.of(endpoints.get(address));
                                assertThat(call.send(school, Who.ANONYMOUS).statusCode())
                                        .as(address)
                                        .isEqualTo(expected.get(Who.ANONYMOUS));
                            });
        } finally {
            school.nobodyIsNobodyAgain();
        }
    }

    @Test
    void noAddressIsLeftToTheDefault() {
        assertThat(Endpoint.all()).allSatisfy(endpoint -> assertThat(saysWho(endpoint)).isTrue());
    }

    private Map<Who, Integer> answers(Endpoint endpoint) {
        open();
        var answers = new EnumMap<Who, Integer>(Who.class);
        var read = endpoint.writes() ? null : calls.of(endpoint);
        for (var who : Who.values()) {
            // what only reads leaves all as it was for the next
            var call = read != null ? read : calls.of(endpoint);
            answers.put(who, call.send(school, who).statusCode());
        }
        return answers;
    }

    private static Map<String, Endpoint> endpoints() {
        var byAddress = new TreeMap<String, Endpoint>();
        Endpoint.all().forEach(endpoint -> byAddress.put(endpoint.toString(), endpoint));
        return byAddress;
    }

    private static boolean saysWho(Endpoint endpoint) {
        return Stream.of(endpoint.method(), endpoint.method().getDeclaringClass())
                .anyMatch(
                        place ->
                                place.isAnnotationPresent(RolesAllowed.class)
                                        || place.isAnnotationPresent(Authenticated.class)
                                        || place.isAnnotationPresent(PermitAll.class));
    }
}
