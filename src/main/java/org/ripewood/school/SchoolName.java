package org.ripewood.school;

/**
 * What the school is called.
 *
 * @param name empty while it has none
 */
public record SchoolName(String name, long version) {}
