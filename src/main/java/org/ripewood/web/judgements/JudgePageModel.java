package org.ripewood.web.judgements;

import org.ripewood.course.Rubric;
import org.ripewood.web.kit.FormState;

/**
 * The form by which something is judged.
 *
 * @param at address of the judgements' page
 * @param of what is judged, by name
 */
public record JudgePageModel(String at, String of, Rubric rubric, FormState typed) {}
