package org.ripewood.core.progress;

import java.util.List;
import java.util.Map;

/**
 * A technique's rules for one species as boolean expressions of some language.
 *
 * @param done signed off and not yet due again
 * @param needed known to be needed
 * @param notNeeded known not to be needed
 * @param locals conditions that checks ask by name
 * @param checks everything that health and order ask for
 * @param skilled whether the keeper has shown the skill
 */
record TechniqueText(
        int place,
        String code,
        boolean forSpecies,
        Bool done,
        Bool needed,
        Bool notNeeded,
        Map<String, Bool> locals,
        List<Check> checks,
        Bool skilled,
        Check season) {

    /**
     * One reason: not known where {@code known} is false, not met where {@code met} is false, and
     * not known either where {@code doubted} is true.
     */
    record Check(String key, Bool known, Bool met, Bool doubted) {}
}
