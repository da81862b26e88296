package org.ripewood.people;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** That a person is made up, for the sample course. */
@Entity
@Table(name = "sample_person")
class SamplePersonEntity {

    @Id Long personId;

    long courseId;
}
