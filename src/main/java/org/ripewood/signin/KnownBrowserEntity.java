package org.ripewood.signin;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.ripewood.audit.NotAudited;

/** A browser in which a person signed in before. */
@Entity
@NotAudited
@Table(name = "known_browser")
class KnownBrowserEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "known_browser_seq")
    @SequenceGenerator(
            name = "known_browser_seq",
            sequenceName = "known_browser_seq",
            allocationSize = 50)
    Long id;

    long personId;
    String secretHash;
    Instant knownSince;
}
