package org.ripewood.web.kit;

import java.util.Map;
import org.ripewood.course.Technique;
import org.ripewood.steps.StepBrief;

/** A step and what it is called. */
public record StepLine(StepBrief step, String title) {

    /** What a technique is called; its code when the content does not have it. */
    public static String title(Map<String, Technique> techniques, String code) {
        var technique = techniques.get(code);
        return technique == null ? code : technique.title();
    }
}
