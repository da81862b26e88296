package org.ripewood.web.kit;

import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.course.Content;
import org.ripewood.course.Species;

/** Common names of the species, by code. */
public final class SpeciesNames {

    private SpeciesNames() {}

    public static Map<String, String> of(Content content) {
        return content.species().values().stream()
                .collect(Collectors.toMap(Species::code, Species::common));
    }
}
