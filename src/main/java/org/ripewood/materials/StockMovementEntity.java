package org.ripewood.materials;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "stock_movement")
class StockMovementEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "stock_movement_seq")
    @SequenceGenerator(
            name = "stock_movement_seq",
            sequenceName = "stock_movement_seq",
            allocationSize = 50)
    @Nullable Long id;

    long itemId;

    @Enumerated(EnumType.STRING)
    MovementKind kind;

    @Column(precision = 12, scale = 3)
    BigDecimal amount;

    LocalDate onDay;
    @Nullable String note;
    long byId;
    Instant recordedAt;

    Movement told(BigDecimal left) {
        return new Movement(
                requireNonNull(id),
                itemId,
                kind,
                Amounts.plain(amount),
                Amounts.plain(left),
                onDay,
                note,
                byId,
                recordedAt);
    }
}
