package org.ripewood.course;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON Schemas the program was built with, one for each kind of content file. */
final class Schemas {

    private record Loaded(JsonNode root, Schema schema) {}

    private final Map<ContentKind, Loaded> byKind = new EnumMap<>(ContentKind.class);

    Schemas() {
        var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        for (var kind : ContentKind.values()) {
            var root = load(kind.schemaResource());
            var location = SchemaLocation.of(root.path("$id").asString());
            byKind.put(kind, new Loaded(root, registry.getSchema(location, root)));
        }
    }

    /** Holds a document against the schema of its kind. */
    void check(ContentKind kind, Document document, Faults faults) {
        var loaded = byKind.get(kind);
        if (loaded == null) {
            throw new IllegalStateException("no schema for " + kind);
        }
        var telling = new SchemaFaults(loaded.root(), document, faults);
        loaded.schema().validate(document.root()).forEach(telling::tell);
    }

    static JsonNode load(String resource) {
        try (var stream = Schemas.class.getClassLoader().getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the program was built without " + resource);
            }
            return JsonMapper.shared().readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
