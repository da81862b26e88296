package org.ripewood.trees;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;

/** Who a tree belongs to since a day; the latest is its keeper now. */
@Entity
@Table(name = "tree_keeping")
class TreeKeepingEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "tree_keeping_seq")
    @SequenceGenerator(
            name = "tree_keeping_seq",
            sequenceName = "tree_keeping_seq",
            allocationSize = 50)
    Long id;

    long treeId;
    long keeperId;
    LocalDate since;
    long byId;
    Instant recordedAt;
}
