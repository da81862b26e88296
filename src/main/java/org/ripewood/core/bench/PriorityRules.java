package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Orders of jobs by rules of priority, each as a list in which a job stands once per block. */
final class PriorityRules {

    private final DayModel model;
    private final SerialScheduler placing;
    private int[] best;
    private Plan plan;

    PriorityRules(DayModel model) {
        this.model = model;
        this.placing = new SerialScheduler(model);
        this.best = placing.layAsBefore();
        this.plan = placing.plan();
        for (var other : all()) {
            if (placing.lay(other) < plan.cost()) {
                best = other;
                plan = placing.plan();
            }
        }
    }

    /** The order of the best plan, that of the plan in force among them. */
    int[] best() {
        return best;
    }

    /** The best plan, or the one in force where that is no dearer. */
    Plan plan() {
        return plan;
    }

    private List<int[]> all() {
        var orders = new ArrayList<int[]>();
        for (var rule : rules()) {
            orders.add(placing.asTheyCome(rule));
            orders.add(jobByJob(rule));
        }
        return orders;
    }

    private List<Comparator<Integer>> rules() {
        return List.of(
                Comparator.comparingInt(this::taughtNow),
                Comparator.comparingInt(this::left),
                Comparator.comparingInt(b -> -left(b)),
                Comparator.comparingInt(this::taughtLeft),
                Comparator.comparingInt(b -> -taughtLeft(b)),
                Comparator.comparingInt(this::studentLeft),
                Comparator.comparingDouble(b -> -jobOf(b).usefulness()));
    }

    private Job jobOf(int b) {
        return model.jobs.get(model.blocks.get(b).job());
    }

    private int taughtNow(int b) {
        return model.blocks.get(b).taughtMinutes();
    }

    private int left(int b) {
        int end = model.firstBlock[model.blocks.get(b).job() + 1];
        return model.blocks.subList(b, end).stream().mapToInt(Block::minutes).sum();
    }

    private int taughtLeft(int b) {
        int end = model.firstBlock[model.blocks.get(b).job() + 1];
        return model.blocks.subList(b, end).stream().mapToInt(Block::taughtMinutes).sum();
    }

    private int studentLeft(int b) {
        int student = model.student[model.blocks.get(b).job()];
        return model.blocks.stream()
                .filter(block -> model.student[block.job()] == student)
                .mapToInt(Block::minutes)
                .sum();
    }

    private int[] jobByJob(Comparator<Integer> rule) {
        var firsts = new ArrayList<Integer>();
        for (int job : model.todo()) {
            firsts.add(model.firstBlock[job]);
        }
        firsts.sort(rule.thenComparing(Comparator.naturalOrder()));
        return firsts.stream()
                .map(b -> model.blocks.get(b).job())
                .flatMapToInt(
                        job ->
                                IntStream.range(model.firstBlock[job], model.firstBlock[job + 1])
                                        .filter(b -> model.contended[b])
                                        .map(b -> job))
                .toArray();
    }
}
