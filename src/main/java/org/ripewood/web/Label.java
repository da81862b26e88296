package org.ripewood.web;

import java.util.function.UnaryOperator;

/**
 * A field of a form as people know it.
 *
 * @param words what one of its values is called
 */
record Label(String field, String label, UnaryOperator<String> words) {

    static Label of(String field, String label) {
        return new Label(field, label, UnaryOperator.identity());
    }
}
