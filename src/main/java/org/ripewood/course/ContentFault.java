package org.ripewood.course;

/**
 * Something wrong in a content file.
 *
 * @param line from 1; 0 when it is about the file as a whole
 */
public record ContentFault(String file, int line, String found, String expected) {

    /** The fault in a line of text. */
    public String told() {
        return "%s:%d: found %s; expected %s".formatted(file, line, found, expected);
    }
}
