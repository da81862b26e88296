package org.ripewood.platform.problems;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whoever loses a race in the database is asked to try once more. Codes: PostgreSQL 16 manual,
 * appendix A; those of H2 from memory.
 */
@Tag("fast")
class LostRaceTest {

    @ParameterizedTest
    @ValueSource(strings = {"40001", "40P01", "55P03", "HYT00", "90131"})
    void itIsAConflictThatMayBeTriedAgain(String state) {
        var sql = new SQLException("could not obtain lock on row in relation \"step\"", state);
        var problem = Problems.of(new IllegalStateException("wrapped", sql)).orElseThrow();
        assertThat(problem.status()).isEqualTo(409);
        assertThat(problem.maybe()).isEqualTo("Maybe try once more.");
        assertThat(problem.detail()).contains("nothing was saved").doesNotContain("relation");
    }

    @Test
    void aDatabaseOutOfReachIsNoConflict() {
        // 08006: connection failure; 53300: too many connections
        assertThat(Problems.of(new SQLException("gone", "08006"))).isEmpty();
        assertThat(Problems.of(new SQLException("full", "53300"))).isEmpty();
        assertThat(Problems.of(new SQLException("no state"))).isEmpty();
    }

    /** H2's ErrorCode.CHECK_CONSTRAINT_INVALID; PostgreSQL's SQLSTATE of an unmet check. */
    @Test
    void aCheckThatCannotBeEvaluatedIsAFaultOfTheService() {
        var closed = new SQLException("The database has been closed", "90098", 90098);
        var sql = new SQLException("Check constraint invalid", "23514", 23514, closed);
        assertThat(Problems.of(new IllegalStateException("wrapped", sql))).isEmpty();

        var unmet = new SQLException("violates check constraint", "23514");
        assertThat(Problems.of(unmet).orElseThrow().status()).isEqualTo(409);
    }
}
