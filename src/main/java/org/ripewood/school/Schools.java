package org.ripewood.school;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** The name of the school, as it is kept. */
@ApplicationScoped
@Transactional
public class Schools {

    private final SchoolRows rows;
    private final NameShown shown;

    Schools(SchoolRows rows, NameShown shown) {
        this.rows = rows;
        this.shown = shown;
    }

    /** What it is called, and the version of that. It is no secret. */
    public SchoolName get() {
        return rows.findById(SchoolEntity.ID).toRecord();
    }

    /**
     * Names it; registrars only.
     *
     * @throws Refused 412 when somebody named it since
     */
    public SchoolName name(Actor actor, long version, NewSchoolName wanted) {
        actor.require(Role.REGISTRAR, "name the school");
        var row = rows.findById(SchoolEntity.ID);
        if (row.version != version) {
            throw Refused.stale("name of the school");
        }
        row.name = wanted.name().strip();
        rows.flush();
        shown.forget();
        return row.toRecord();
    }
}
