package org.ripewood.standing;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import org.ripewood.platform.Actor;

/** The decisions kept. Their reasons are kept as told, so that later content cannot change them. */
@ApplicationScoped
class DecisionBook implements PanacheRepositoryBase<DecisionEntity, Long> {

    private final ObjectWriter writer;
    private final ObjectReader reader;

    DecisionBook(ObjectMapper json) {
        this.writer = json.writerFor(TechniqueStanding.class);
        // A view that has lost a field since must not make an old decision unreadable.
        this.reader =
                json.readerFor(TechniqueStanding.class)
                        .without(
                                DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
                                DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES);
    }

    long keep(
            Actor actor,
            long treeId,
            LocalDate on,
            String revision,
            TechniqueStanding standing,
            Instant at) {
        var entity = new DecisionEntity();
        entity.treeId = treeId;
        entity.onDay = on;
        entity.contentRevision = revision;
        entity.standing = write(standing);
        entity.byId = actor.personId();
        entity.decidedAt = at;
        persistAndFlush(entity);
        return requireNonNull(entity.id);
    }

    Decision told(DecisionEntity entity) {
        return new Decision(
                requireNonNull(entity.id),
                entity.treeId,
                entity.onDay,
                entity.contentRevision,
                read(entity.standing),
                entity.byId,
                entity.decidedAt);
    }

    private String write(TechniqueStanding standing) {
        try {
            return writer.writeValueAsString(standing);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a standing could not be written as JSON", e);
        }
    }

    private TechniqueStanding read(String text) {
        try {
            return reader.readValue(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a stored standing could not be read", e);
        }
    }
}
