package org.ripewood.lists;

/**
 * Something in a list that cannot be taken as it is.
 *
 * @param line where its row begins, from 1
 * @param column as the list's header has it; empty when it is about the whole row
 */
public record ListFault(int line, String column, String message) {}
