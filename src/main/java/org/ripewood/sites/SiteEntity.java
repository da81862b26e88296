package org.ripewood.sites;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.annotations.ListIndexBase;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "site")
class SiteEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "site_seq")
    @SequenceGenerator(name = "site_seq", sequenceName = "site_seq", allocationSize = 50)
    Long id;

    @Version long version;
    String name;
    double latitude;
    double longitude;
    String zone;

    /** Null of sites entered before it was noted. */
    @Column(updatable = false)
    @Nullable Long enteredById;

    boolean schoolGround;

    /**
     * Counts imports; it is raised by a statement of its own, since it is no version to compare.
     */
    @Column(updatable = false)
    long readingsRevision;

    /** Twelve, January first, or none. */
    @ElementCollection
    @CollectionTable(name = "site_month", joinColumns = @JoinColumn(name = "site_id"))
    @OrderColumn(name = "month_no", nullable = false)
    @ListIndexBase(1)
    List<MonthMeans> months = new ArrayList<>();

    Site toSite() {
        return new Site(
                id,
                name,
                latitude,
                longitude,
                ZoneId.of(zone),
                schoolGround,
                months.stream().map(month -> month.meanMinimumCelsius).toList(),
                months.stream().map(month -> month.meanMaximumCelsius).toList(),
                version,
                readingsRevision);
    }

    SiteEntered toEntered() {
        return new SiteEntered(toSite(), enteredById);
    }
}
