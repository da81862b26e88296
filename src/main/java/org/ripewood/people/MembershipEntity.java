package org.ripewood.people;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Role;

/** A person in a course, as one thing only: nobody teaches themselves. */
@Entity
@Table(name = "membership")
class MembershipEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "membership_seq")
    @SequenceGenerator(
            name = "membership_seq",
            sequenceName = "membership_seq",
            allocationSize = 50)
    Long id;

    long courseId;
    long personId;

    @Enumerated(EnumType.STRING)
    Role role;

    LocalDate joinedOn;
    @Nullable LocalDate leftOn;
    @Nullable Long endedById;

    /** Course and person while it lasts, null afterwards; unique in the database. */
    @Nullable String memberOf;

    static MembershipEntity of(long courseId, long personId, Role role, LocalDate joinedOn) {
        var membership = new MembershipEntity();
        membership.courseId = courseId;
        membership.personId = personId;
        membership.role = role;
        membership.joinedOn = joinedOn;
        membership.memberOf = courseId + "/" + personId;
        return membership;
    }

    Membership toRecord(String name) {
        return new Membership(personId, name, role, joinedOn, leftOn);
    }
}
