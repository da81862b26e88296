package org.ripewood.signin;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.ripewood.audit.NotAudited;

/** A try to sign in that did not turn out well, or is not judged yet. */
@Entity
@NotAudited
@Table(name = "sign_in_failure")
class SignInFailureEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "sign_in_failure_seq")
    @SequenceGenerator(
            name = "sign_in_failure_seq",
            sequenceName = "sign_in_failure_seq",
            allocationSize = 50)
    Long id;

    String loginKey;
    String addressKey;
    Instant failedAt;
}
