package org.ripewood.course;

/** A group of species that rules may name. */
public record Group(String code, String title, String note) {}
