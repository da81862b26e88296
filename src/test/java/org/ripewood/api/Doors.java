package org.ripewood.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipInputStream;
import org.ripewood.trees.Tree;

/** Every address that reads of a tree, a person, a course or the school, and what it answers. */
final class Doors {

    /**
     * Papers as PDF are made of pages that are read here; files of photos, of the course content
     * and of calendars tell nothing of a tree's record.
     */
    private static final String LEFT_OUT =
            ".*(\\.pdf$|content|/lessons|/password|/calendar|\\{task}|/photos/|/judgements/\\{id}).*";

    private Doors() {}

    /** The addresses filled in, by address as it is declared. */
    static Map<String, String> about(School school, Tree tree, long personId, long courseId) {
        var step = school.assignedStep();
        var session = school.sessionToday().id();
        var filled = new TreeMap<String, String>();
        for (var endpoint : Endpoint.all()) {
            var path = endpoint.path();
            if (endpoint.writes() || path.matches(LEFT_OUT)) {
                continue;
            }
            var id =
                    switch (path.replaceFirst("^/(api/v1/?)?", "").split("/", 2)[0]) {
                        case "trees" -> tree.id();
                        case "people", "students" -> personId;
                        case "courses" -> courseId;
                        case "sessions" -> session;
                        case "steps" -> step.id();
                        case "decisions" -> step.decisionId();
                        case "sites" -> tree.siteId();
                        default -> 1L;
                    };
            filled.put(
                    endpoint.toString(),
                    path.replace("{id}", "" + id)
                            .replace("{woundId}", "1")
                            .replace(
                                    "{rubric}",
                                    path.startsWith("/trees") ? "pests" : "wiring-skill")
                            .replace("{code}", "wiring_primary")
                            .replace("{topic}", "learning")
                            .replace("{kind}", "trees"));
        }
        return filled;
    }

    /** What an answer says; of a record with photos, the record. */
    static String text(Response answer) {
        var bytes = answer.asByteArray();
        if (!answer.contentType().startsWith("application/zip")) {
            return new String(bytes, StandardCharsets.UTF_8);
        }
        try (var zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            assertThat(zip.getNextEntry().getName()).isEqualTo("record.json");
            return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
