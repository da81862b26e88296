package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** Tells steps with all that happened to them, in three queries however many they are. */
@ApplicationScoped
public class StepHistories {

    private final WaiverBook waivers;
    private final ReportBook reports;
    private final EventBook events;

    StepHistories(WaiverBook waivers, ReportBook reports, EventBook events) {
        this.waivers = waivers;
        this.reports = reports;
        this.events = events;
    }

    Step told(StepEntity step) {
        return told(List.of(step.brief())).get(0);
    }

    /** The steps with all that happened to them, in their order. */
    public List<Step> told(List<StepBrief> steps) {
        if (steps.isEmpty()) {
            return List.of();
        }
        var ids = steps.stream().map(StepBrief::id).toList();
        var waiversOf = byStep(waivers.of(ids), waiver -> waiver.stepId, WaiverEntity::told);
        var reportsOf = byStep(reports.of(ids), report -> report.stepId, ReportEntity::told);
        var eventsOf = byStep(events.of(ids), event -> event.stepId, EventEntity::told);
        return steps.stream()
                .map(
                        step ->
                                told(
                                        step,
                                        waiversOf.getOrDefault(step.id(), List.of()),
                                        reportsOf.getOrDefault(step.id(), List.of()),
                                        eventsOf.getOrDefault(step.id(), List.of())))
                .toList();
    }

    private static Step told(
            StepBrief step,
            List<Step.Waiver> waivers,
            List<Step.Report> reports,
            List<Step.Event> events) {
        return new Step(
                step.id(),
                step.version(),
                step.treeId(),
                step.technique(),
                step.state(),
                step.assignedById(),
                step.assignedOn(),
                step.from(),
                step.until(),
                step.note(),
                step.decisionId(),
                waivers,
                reports.isEmpty() ? null : reports.get(reports.size() - 1),
                events);
    }

    private static <E, T> Map<Long, List<T>> byStep(
            Collection<E> entities, ToLongFunction<E> stepId, Function<E, T> told) {
        return entities.stream()
                .collect(
                        Collectors.groupingBy(
                                stepId::applyAsLong,
                                Collectors.mapping(told, Collectors.toList())));
    }
}
