package org.ripewood.web.catalogue;

import java.util.Collection;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ripewood.course.Content;

/** Groups and species of a rule, by their names. */
final class Kinds {

    private Kinds() {}

    /** All names in the order of the alphabet; empty when neither is named. */
    static String told(Collection<String> groups, Collection<String> species, Content content) {
        return Stream.concat(
                        groups.stream().map(code -> group(code, content)),
                        species.stream().map(code -> content.kindOf(code).common()))
                .sorted()
                .collect(Collectors.joining(", "));
    }

    static String group(String code, Content content) {
        var group = content.groups().get(code);
        return group == null ? code : group.title();
    }
}
