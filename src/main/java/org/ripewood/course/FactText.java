package org.ripewood.course;

/** How a fact is called and measured. */
public record FactText(String code, String title, String unit, String how) {}
