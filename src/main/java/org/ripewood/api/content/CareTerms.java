package org.ripewood.api.content;

import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.PlainValue;
import org.ripewood.core.season.StageRange;
import org.ripewood.course.Technique;

/** Aftercare of a technique in the terms of the content files. */
public record CareTerms(
        String code,
        String task,
        String kind,
        int fromDay,
        int days,
        int waitDays,
        @Nullable Integer everyDaysInGrowth,
        @Nullable Integer everyDaysAtRest,
        List<String> onlyStages,
        List<String> notStages,
        @Nullable Ends endsWhen) {

    /** What, once it is seen, ends the care for good. */
    record Ends(String fact, @Schema(description = "true, false or a word") Object is) {}

    public static List<CareTerms> of(Technique technique) {
        return technique.aftercare().stream().map(CareTerms::of).toList();
    }

    private static CareTerms of(Technique.Aftercare care) {
        var window = care.window();
        var rhythm = care.rhythm();
        var ends = care.endsWhen();
        return new CareTerms(
                care.code(),
                care.task(),
                care.kind().name().toLowerCase(Locale.ROOT),
                window.fromDay(),
                window.days(),
                window.waitDays(),
                rhythm == null ? null : days(rhythm.everyDaysInGrowth()),
                rhythm == null ? null : days(rhythm.everyDaysAtRest()),
                window.onlyStages().stream().map(StageRange::toString).toList(),
                window.notStages().stream().map(StageRange::toString).toList(),
                ends == null ? null : new Ends(ends.fact().code(), PlainValue.of(ends.value())));
    }

    private static @Nullable Integer days(int every) {
        return every == 0 ? null : every;
    }
}
