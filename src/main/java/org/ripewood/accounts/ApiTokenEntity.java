package org.ripewood.accounts;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "api_token")
class ApiTokenEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "api_token_seq")
    @SequenceGenerator(name = "api_token_seq", sequenceName = "api_token_seq", allocationSize = 50)
    Long id;

    long personId;
    String name;

    @Enumerated(EnumType.STRING)
    ApiToken.Scope scope;

    String secretHash;
    Instant madeAt;
    LocalDate lastDay;
    @Nullable LocalDate lastUsedOn;

    ApiToken toRecord() {
        return new ApiToken(id, name, scope, madeAt, lastDay, lastUsedOn);
    }
}
