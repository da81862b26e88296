package org.ripewood.accounts;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** The one link by which a person may choose a password. */
@Entity
@Table(name = "password_link")
class PasswordLinkEntity {

    @Id long personId;

    String tokenHash;

    @Enumerated(EnumType.STRING)
    PasswordLink.Kind kind;

    Instant expiresAt;
}
