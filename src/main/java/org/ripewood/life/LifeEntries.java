package org.ripewood.life;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.course.Stage;
import org.ripewood.life.LifeEntry.Kind;
import org.ripewood.photos.Photo;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Observation;
import org.ripewood.records.Wound;
import org.ripewood.standing.TreeLook;
import org.ripewood.standing.WorkTold;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;

/** All entries of a tree's life, from what was read of it. */
final class LifeEntries {

    /** The latest first; of one day in the order of the kinds. */
    static final Comparator<LifeEntry> LATEST_FIRST =
            Comparator.comparing(LifeEntry::on)
                    .reversed()
                    .thenComparing(LifeEntry::kind)
                    .thenComparing(LifeEntry::id, Comparator.nullsFirst(Comparator.reverseOrder()));

    /** What is said of a step that an instructor signed off. */
    static final String SIGNED_OFF = "signed off";

    private final TreeLook look;
    private final List<LifeEntry> entries = new ArrayList<>();

    private LifeEntries(TreeLook look) {
        this.look = look;
    }

    /** Those up to the day it was looked at, the latest first. */
    static List<LifeEntry> of(TreeLook look, List<Photo> photos) {
        return new LifeEntries(look).all(photos);
    }

    private List<LifeEntry> all(List<Photo> photos) {
        var tree = look.tree();
        add(tree.cameOn(), Kind.ARRIVED, "Arrived", "", null, null);
        var leftOn = tree.leftOn();
        if (leftOn != null) {
            add(leftOn, Kind.LEFT, "Left the school", "", null, null);
        }
        photos.forEach(this::photo);
        look.steps().stream().filter(step -> step.state().isDone()).forEach(this::step);
        look.worksTold().stream().filter(work -> !work.signedOff()).forEach(this::work);
        look.containers().forEach(this::container);
        look.day().state().record().wounds().forEach(this::wound);
        trunk().forEach(this::thickness);
        look.day().state().record().seen(Fact.TRAINING_STAGE).forEach(this::stage);
        return entries.stream()
                .filter(entry -> !entry.on().isAfter(look.on()))
                .sorted(LATEST_FIRST)
                .toList();
    }

    private void add(
            LocalDate on,
            Kind kind,
            String title,
            String detail,
            @Nullable Long id,
            @Nullable Double mm) {
        entries.add(new LifeEntry(on, kind, title, detail, id, mm));
    }

    private void photo(Photo photo) {
        var view = photo.view().title().toLowerCase(Locale.ROOT);
        add(
                photo.takenOn(),
                Kind.PHOTO,
                "Photo, " + view,
                Objects.requireNonNullElse(photo.caption(), ""),
                photo.id(),
                null);
    }

    private void step(StepBrief step) {
        var doneOn = step.doneOn();
        if (doneOn != null) {
            add(
                    doneOn,
                    Kind.STEP,
                    look.day().content().titleOf(step.technique()),
                    step.state() == StepState.SIGNED_OFF ? SIGNED_OFF : "found done",
                    step.id(),
                    null);
        }
    }

    private void work(WorkTold told) {
        var work = told.work();
        if (foundDone(work.work().technique(), work.doneOn())) {
            return;
        }
        add(
                work.doneOn(),
                Kind.WORK,
                look.day().content().titleOf(work.work().technique()),
                "entered, not signed off",
                work.id(),
                null);
    }

    /** Whether a step tells of the same work already. */
    private boolean foundDone(String technique, LocalDate on) {
        return look.steps().stream()
                .anyMatch(
                        step ->
                                step.state() == StepState.FOUND_DONE
                                        && step.technique().equals(technique)
                                        && on.equals(step.doneOn()));
    }

    private void container(ContainerStay stay) {
        var litres = stay.litres();
        var words =
                Stream.of(
                                stay.description() == null ? "" : stay.description(),
                                litres == null ? "" : LifeWords.number(litres) + " litres")
                        .filter(word -> !word.isEmpty())
                        .toList();
        add(
                stay.since(),
                Kind.CONTAINER,
                stay.kind().equals("ground")
                        ? "Planted in the ground"
                        : "Into a %s container".formatted(stay.kind()),
                String.join(", ", words),
                stay.id(),
                null);
    }

    private void wound(Wound wound) {
        if (wound.deadwoodByDesign()) {
            add(
                    wound.madeOn(),
                    Kind.WOUND,
                    wound.place(),
                    "deadwood made, by design",
                    wound.id(),
                    null);
            return;
        }
        boolean first = true;
        for (var seen : wound.closure().looks()) {
            add(
                    seen.on(),
                    Kind.WOUND,
                    wound.place(),
                    first ? "wound, " + LifeWords.mm(seen.openMm()) + " wide" : opening(seen),
                    wound.id(),
                    seen.openMm());
            first = false;
        }
    }

    private static String opening(Closure.Look seen) {
        return seen.openMm() == 0 ? "closed" : LifeWords.mm(seen.openMm()) + " open";
    }

    /** The base where it was measured; else the diameter at the lowest height that was. */
    private List<Observation> trunk() {
        var record = look.day().state().record();
        var base = record.seen(Fact.TRUNK_BASE_MM).toList();
        if (!base.isEmpty()) {
            return base;
        }
        var lowest =
                record.seen(Fact.TRUNK_DIAMETER_MM)
                        .map(Observation::heightMm)
                        .filter(Objects::nonNull)
                        .min(Comparator.naturalOrder());
        return lowest.isEmpty()
                ? List.of()
                : record.seen(Fact.TRUNK_DIAMETER_MM)
                        .filter(seen -> lowest.get().equals(seen.heightMm()))
                        .toList();
    }

    private void thickness(Observation seen) {
        if (seen.value() instanceof Value.Number thick) {
            var height = seen.heightMm();
            add(
                    seen.observedOn(),
                    Kind.TRUNK,
                    height == null ? "Trunk base" : "Trunk at " + LifeWords.mm(height),
                    LifeWords.mm(thick.amount()),
                    seen.id(),
                    thick.amount());
        }
    }

    private void stage(Observation seen) {
        if (seen.value() instanceof Value.Word word) {
            add(
                    seen.observedOn(),
                    Kind.STAGE,
                    look.day().content().stages().stream()
                            .filter(stage -> stage.code().equals(word.word()))
                            .findFirst()
                            .map(Stage::title)
                            .orElse(word.word()),
                    "stage, said by an instructor",
                    seen.id(),
                    null);
        }
    }
}
