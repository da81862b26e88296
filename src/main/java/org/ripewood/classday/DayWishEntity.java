package org.ripewood.classday;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A wish as it was said; a later one of the same tree and technique replaces it. */
@Entity
@Table(name = "day_wish")
class DayWishEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "day_wish_seq")
    @SequenceGenerator(name = "day_wish_seq", sequenceName = "day_wish_seq", allocationSize = 50)
    @Nullable Long id;

    long sessionId;
    long treeId;
    String technique;

    @Enumerated(EnumType.STRING)
    DayWish wish;

    long saidBy;
    Instant saidAt;
}
