package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.Standings;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Said;

/** Lays out how every technique stands for a tree. */
@ApplicationScoped
class TreeTechniqueAssembler {

    private final Standings standings;
    private final Said said;

    TreeTechniqueAssembler(Standings standings, Said said) {
        this.standings = standings;
        this.said = said;
    }

    TreeTechniqueModel lay(Actor actor, long treeId, FormState typed) {
        var look = standings.lookToday(actor, treeId);
        said.now(look.day());
        var standing = look.standing();
        return new TreeTechniqueModel(
                look.tree(),
                actor.is(Role.INSTRUCTOR),
                look.proposals(standing),
                look.careNow(),
                look.day().content().stages(),
                standing,
                VerdictGroup.of(standing),
                typed);
    }
}
