package org.ripewood.materials;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.annotations.BatchSize;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.WireMetal;

/** An item of any kind; what does not belong to its kind is null. */
@Entity
@Table(name = "stock_item")
class StockItemEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "stock_item_seq")
    @SequenceGenerator(
            name = "stock_item_seq",
            sequenceName = "stock_item_seq",
            allocationSize = 50)
    @Nullable Long id;

    @Version long version;

    @Enumerated(EnumType.STRING)
    StockKind kind;

    String name;
    String nameKey;
    String unit;
    long changedById;
    Instant changedAt;

    @Enumerated(EnumType.STRING)
    @Nullable ContainerUse usedAs;

    @Nullable String material;

    @Enumerated(EnumType.STRING)
    @Nullable Outline outline;

    @Nullable Double topLengthMm;
    @Nullable Double topWidthMm;
    @Nullable Double bottomLengthMm;
    @Nullable Double bottomWidthMm;
    @Nullable Double depthMm;
    @Nullable Double lipMm;
    @Nullable Double massKg;

    @Column(name = "dry_low_kg_per_litre")
    @Nullable Double dryLow;

    @Column(name = "dry_high_kg_per_litre")
    @Nullable Double dryHigh;

    @Nullable Double capacityLow;
    @Nullable Double capacityHigh;
    @Nullable Double airLow;
    @Nullable Double airHigh;
    @Nullable Double bagLitres;

    @Enumerated(EnumType.STRING)
    @Nullable WireMetal metal;

    @Nullable Double gaugeMm;

    @ElementCollection
    @CollectionTable(name = "stock_mix_part", joinColumns = @JoinColumn(name = "mix_id"))
    @OrderColumn(name = "position")
    @BatchSize(size = 100)
    List<MixPart> parts = new ArrayList<>();

    long id() {
        return requireNonNull(id);
    }
}
