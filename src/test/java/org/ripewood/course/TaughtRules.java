package org.ripewood.course;

import java.util.List;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Traits;

/** The rules and species of the course content in the jar, without starting the service. */
public record TaughtRules(List<TechniqueRule> techniques, List<Traits> species) {

    public static TaughtRules read() {
        var outcome = new ContentReading(text -> text).read(ContentFiles.inJar(), new Faults());
        var content = outcome.content();
        if (content == null) {
            throw new IllegalStateException("faults in the content: " + outcome.faults());
        }
        return new TaughtRules(
                content.techniques().values().stream().map(Technique::rule).toList(),
                content.species().values().stream().map(Species::traits).toList());
    }
}
