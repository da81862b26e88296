package org.ripewood.school;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;

/** The one row of the school. */
@Entity
@Table(name = "school")
class SchoolEntity {

    static final int ID = 1;

    @Id int id;

    @Version long version;

    String name;

    SchoolName toRecord() {
        return new SchoolName(name, version);
    }
}
