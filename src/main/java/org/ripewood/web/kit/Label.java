package org.ripewood.web.kit;

import java.util.function.UnaryOperator;

/**
 * A field of a form as people know it.
 *
 * @param words what one of its values is called
 */
public record Label(String field, String label, UnaryOperator<String> words) {

    public static Label of(String field, String label) {
        return new Label(field, label, UnaryOperator.identity());
    }
}
