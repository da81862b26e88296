package org.ripewood.signin;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.ripewood.audit.NotAudited;

/** A sign-in whose password was right and whose code is waited for. */
@Entity
@NotAudited
@Table(name = "half_sign_in")
class HalfSignInEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "half_sign_in_seq")
    @SequenceGenerator(
            name = "half_sign_in_seq",
            sequenceName = "half_sign_in_seq",
            allocationSize = 50)
    Long id;

    long personId;
    String secretHash;
    Instant begunAt;
}
