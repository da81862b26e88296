package org.ripewood.course;

import org.ripewood.core.progress.Criterion.Ages;

/**
 * How a fact is called and measured.
 *
 * @param ages by what evidence of it grows old
 */
public record FactText(String code, String title, String unit, String how, Ages ages) {}
