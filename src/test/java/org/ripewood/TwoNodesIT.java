package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two nodes share one database and one folder behind a proxy that gives every connection to the
 * other of them: nobody notices.
 */
class TwoNodesIT {

    @TempDir Path data;
    private RunningJar one;
    private RunningJar other;

    @BeforeEach
    void start() throws Exception {
        Database.renew("demo");
        var port = Database.server().getPort();
        one = RunningJar.onPostgres(data, port);
        other = RunningJar.onPostgres(data, port);
    }

    @AfterEach
    void stop() {
        one.close();
        other.close();
    }

    @Test
    void aSessionIsOfBothAndEndsOnBoth() throws Exception {
        var here = DemoStudent.signIn(one, "anrike");
        var there = here.at(other);
        assertThat(there.read("/api/v1/people/me")).isEqualTo(here.read("/api/v1/people/me"));
        assertThat(there.leave()).isEqualTo(303);
        assertThat(here.get("/api/v1/people/me").statusCode()).isEqualTo(401);
    }

    @Test
    void whatOneWritesTheOtherReadsAndRefusesToOverwrite() throws Exception {
        var here = DemoStudent.signIn(one, "anrike");
        var there = here.at(other);
        var tree = here.read("/api/v1/trees").path("items").path(0);
        var path = "/api/v1/trees/" + tree.path("id").asLong();
        var seen = there.get(path).headers().firstValue("ETag").orElseThrow();
        var changed =
                """
                {"label": "%s", "species": "%s", "keeperId": %d, "siteId": %d, "cameOn": "%s",
                 "note": "told to one of two"}
                """
                        .formatted(
                                tree.path("label").asText(),
                                tree.path("species").asText(),
                                tree.path("keeperId").asLong(),
                                tree.path("siteId").asLong(),
                                tree.path("cameOn").asText());
        assertThat(here.put(path, seen, changed)).isEqualTo(200);
        assertThat(there.read(path).path("note").asText()).isEqualTo("told to one of two");
        assertThat(there.put(path, seen, changed)).isEqualTo(412);
    }

    @Test
    void behindAProxyThatRemembersNobodyEveryReportIsThereOnce() throws Exception {
        try (var proxy = RoundRobin.before(List.of(one.port(), other.port()))) {
            var through = one.through(proxy.port());
            var tree =
                    DemoStudent.signIn(through, "anrike")
                            .read("/api/v1/trees")
                            .path("items")
                            .path(0)
                            .path("id")
                            .asLong();
            var path = "/api/v1/trees/" + tree + "/observations";
            var notes = new HashSet<String>();
            for (int i = 0; i < 20; i++) {
                // a new line each time, so the other node each time
                var student = DemoStudent.signIn(through, "anrike");
                var note = "through the proxy " + i;
                student.make(
                        path,
                        """
                        {"fact": "soil_moist", "value": "yes", "observedOn": "2026-04-01",
                         "note": "%s"}
                        """
                                .formatted(note));
                notes.add(note);
            }
            var kept =
                    DemoStudent.signIn(through, "anrike")
                            .read(path + "?size=200")
                            .path("items")
                            .findValuesAsText("note");
            kept.removeIf(note -> !note.startsWith("through the proxy"));
            assertThat(kept).containsExactlyInAnyOrderElementsOf(notes);
        }
    }
}
