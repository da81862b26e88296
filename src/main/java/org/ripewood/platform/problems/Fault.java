package org.ripewood.platform.problems;

/**
 * One thing wrong with what was sent.
 *
 * @param field the field's name as the sender wrote it; empty when it is about the whole
 * @param message what was found and what was expected
 */
public record Fault(String field, String message) {}
