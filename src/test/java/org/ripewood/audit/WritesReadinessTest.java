package org.ripewood.audit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.eclipse.microprofile.health.HealthCheckResponse.Status;
import org.junit.jupiter.api.Test;
import org.ripewood.SchoolProfile;

/** The service is ready only while the record can be written. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class WritesReadinessTest {

    @Inject DataSource database;

    @Test
    void aDatabaseThatTakesNoChangeOfTheRecordIsNotReady() throws Exception {
        run(
                "alter table audit_change add constraint audit_change_broken check (thing <> 'write_trial')");
        try {
            assertThat(new WritesReadiness(database).call().getStatus()).isEqualTo(Status.DOWN);
        } finally {
            run("alter table audit_change drop constraint audit_change_broken");
        }
        assertThat(new WritesReadiness(database).call().getStatus()).isEqualTo(Status.UP);
        given().get("/q/health/ready").then().statusCode(200);
    }

    @Test
    void tryingLeavesNothingInTheAudit() throws Exception {
        new WritesReadiness(database).call();
        try (var connection = database.getConnection();
                var statement = connection.createStatement();
                var left =
                        statement.executeQuery("select count(*) from audit_entry where id < 0")) {
            left.next();
            assertThat(left.getInt(1)).isZero();
        }
    }

    private void run(String sql) throws SQLException {
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
