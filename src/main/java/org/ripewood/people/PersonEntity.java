package org.ripewood.people;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.EnumSet;
import java.util.Set;
import org.hibernate.annotations.Fetch;
import org.hibernate.annotations.FetchMode;
import org.ripewood.platform.Role;

@Entity
@Table(name = "person")
public class PersonEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "person_seq")
    @SequenceGenerator(name = "person_seq", sequenceName = "person_seq", allocationSize = 50)
    public Long id;

    public @Version long version;

    public String name;
    public String login;
    public String passwordHash;
    public boolean active;

    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "person_role", joinColumns = @JoinColumn(name = "person_id"))
    @Column(name = "role")
    @Enumerated(EnumType.STRING)
    @Fetch(FetchMode.SUBSELECT)
    public Set<Role> roles = EnumSet.noneOf(Role.class);

    public Person toRecord() {
        return new Person(id, version, name, login, roles, active);
    }
}
