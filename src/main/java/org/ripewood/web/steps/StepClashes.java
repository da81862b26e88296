package org.ripewood.web.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.steps.Step;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;
import org.ripewood.web.kit.TextFormat;

/** Tells whoever answers a step how far it has come meanwhile. */
@ApplicationScoped
class StepClashes {

    private static final List<Label> LABELS =
            List.of(
                    Label.of("state", "How far it is"),
                    Label.of("note", "Word"),
                    Label.of("doneOn", "Done on"),
                    Label.of("evidence", "What was done, and how it looks now"),
                    Label.of("foliagePercent", "Share of the foliage taken, %"),
                    Label.of("rootPercent", "Share of the roots taken, %"),
                    Label.of("woundPlace", "Where the wound is"),
                    Label.of("woundWidthMm", "Its width, mm"),
                    Label.of("woundLengthMm", "Its length, mm"),
                    Label.of("containerKind", "Container it stands in now"),
                    Label.of("containerDescription", "Description of the container"),
                    Label.of("containerLitres", "Litres"));

    private final EditConflicts clashes;
    private final Trees trees;

    StepClashes(EditConflicts clashes, Trees trees) {
        this.clashes = clashes;
        this.trees = trees;
    }

    FormState mend(Actor actor, FormState typed, Step step) {
        var about =
                new EditConflicts.About(
                        "step", step.id(), LABELS, ids -> trees.names(actor, step.treeId(), ids));
        return clashes.mend(typed, now(typed.form(), step), about);
    }

    private static FormState now(String form, Step step) {
        var events = step.events();
        var now =
                FormState.fresh(form)
                        .with("version", step.version())
                        .with("state", step.state().words())
                        .withIfKnown(
                                "note",
                                events.isEmpty() ? null : events.get(events.size() - 1).note());
        var report = step.report();
        if (report == null) {
            return now;
        }
        now =
                now.with("doneOn", report.doneOn())
                        .with("evidence", report.evidence())
                        .withIfKnown("foliagePercent", percent(report.foliageShare()))
                        .withIfKnown("rootPercent", percent(report.rootShare()));
        var wound = report.wound();
        if (wound != null) {
            now =
                    now.with("woundPlace", wound.place())
                            .with("woundWidthMm", TextFormat.plain(wound.widthMm()))
                            .with("woundLengthMm", TextFormat.plain(wound.lengthMm()));
        }
        var container = report.container();
        if (container != null) {
            var litres = container.litres();
            now =
                    now.with("containerKind", container.kind())
                            .withIfKnown("containerDescription", container.description())
                            .withIfKnown(
                                    "containerLitres",
                                    litres == null ? null : TextFormat.plain(litres));
        }
        return now;
    }

    private static @Nullable String percent(@Nullable Double share) {
        return share == null ? null : TextFormat.plain(100 * share);
    }
}
