package org.ripewood.course;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.CareWindow;
import org.ripewood.core.season.LookRhythm;
import org.ripewood.core.season.StageRange;
import org.ripewood.course.Technique.Aftercare;

/** Makes aftercare of its lines in a technique's file. */
final class AftercareBuilding {

    private AftercareBuilding() {}

    static Aftercare aftercare(Part care) {
        var kind = care.text("kind");
        var ends = care.at("endsWhen");
        return new Aftercare(
                care.requireText("code"),
                care.requireText("task"),
                kind == null
                        ? Aftercare.Kind.OTHER
                        : Aftercare.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
                window(care),
                rhythm(care),
                ends.isThere() ? TechniqueBuilding.effect(ends) : null);
    }

    static CareWindow window(Part care) {
        return new CareWindow(
                care.requireInt("fromDay"),
                care.requireInt("days"),
                care.has("waitDays") ? care.requireInt("waitDays") : CareWindow.A_YEAR_ROUND,
                stages(care, "onlyStages"),
                stages(care, "notStages"));
    }

    private static @Nullable LookRhythm rhythm(Part care) {
        int inGrowth = care.has("everyDaysInGrowth") ? care.requireInt("everyDaysInGrowth") : 0;
        int atRest = care.has("everyDaysAtRest") ? care.requireInt("everyDaysAtRest") : 0;
        return inGrowth == 0 && atRest == 0 ? null : new LookRhythm(inGrowth, atRest);
    }

    private static List<StageRange> stages(Part care, String name) {
        return care.texts(name).stream().map(StageRange::parse).toList();
    }
}
