package org.ripewood.signin;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.NotAudited;

/** A browser in which somebody is signed in. */
@Entity
@NotAudited
@Table(name = "sign_in_session")
class SignInSessionEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "sign_in_session_seq")
    @SequenceGenerator(
            name = "sign_in_session_seq",
            sequenceName = "sign_in_session_seq",
            allocationSize = 50)
    Long id;

    long personId;
    String secretHash;
    Instant signedInAt;
    @Nullable Instant confirmedAt;
}
