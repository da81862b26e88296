package org.ripewood.accounts;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A person who cannot sign in and asked for a link. */
@Entity
@Table(name = "password_wish")
class PasswordWishEntity {

    @Id long personId;

    Instant wishedAt;
}
