package org.ripewood.core.progress;

import org.jspecify.annotations.Nullable;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;

/**
 * A tree on a day, laid out flat, as the contenders read it that are no rulebook.
 *
 * <p>Public, because compiled rule text reads it from another class loader. Facts go by their
 * ordinal and techniques by their place in the list of rules; days are −1 for "not" and "never".
 */
public final class Sight {

    private static final int FLOWERS_FRESH_DAYS = 21;

    private final double[] numbers = new double[FACTS];
    private final @Nullable String[] words = new String[FACTS];
    private final long[] ages = new long[FACTS];
    private final boolean[] known = new boolean[FACTS];
    private final boolean[] byStudent = new boolean[FACTS];
    private final long[] doneDays;
    private final @Nullable Facts.Seen[] seen = new Facts.Seen[FACTS];
    private final EvaluationContext moment;
    private final @Nullable Set<String> skills;

    private static final int FACTS = Fact.values().length;

    Sight(Subject subject, LocalDate on, Map<String, Integer> places) {
        this.moment = new EvaluationContext(subject, on, places, new CompiledTechnique[0], 0);
        this.skills = subject.skills();
        this.doneDays = new long[places.size()];
        Arrays.fill(ages, -1);
        for (var fact : Fact.values()) {
            var found = subject.facts().seen(fact);
            if (found != null) {
                put(found);
            }
        }
        for (int i = 0; i < doneDays.length; i++) {
            var day = moment.doneOn(i);
            doneDays[i] = day == null ? -1 : moment.epochDay - day.toEpochDay();
        }
    }

    private void put(Facts.Seen found) {
        var evidence = found.evidence();
        int fact = evidence.fact().ordinal();
        seen[fact] = found;
        known[fact] = true;
        ages[fact] = moment.ageDays(found);
        byStudent[fact] = evidence.source() == Source.STUDENT;
        if (evidence.value() instanceof Value.Number number) {
            numbers[fact] = number.amount();
        } else if (evidence.value() instanceof Value.Flag flag) {
            numbers[fact] = flag.set() ? 1 : 0;
        } else if (evidence.value() instanceof Value.Word word) {
            words[fact] = word.word();
        }
    }

    /** The amount; of a flag 1 for set and 0 for not. */
    public double number(int fact) {
        return numbers[fact];
    }

    public boolean flag(int fact) {
        return numbers[fact] == 1;
    }

    public @Nullable String word(int fact) {
        return words[fact];
    }

    public long age(int fact) {
        return ages[fact];
    }

    /** Growing days, or −1. */
    public long grown(int fact) {
        var found = seen[fact];
        return found == null ? -1 : moment.age(found, Criterion.Ages.GROWTH);
    }

    public boolean known(int fact) {
        return known[fact];
    }

    public boolean byStudent(int fact) {
        return byStudent[fact];
    }

    public long done(int technique) {
        return doneDays[technique];
    }

    public boolean skilled(String lesson) {
        return skills == null || skills.contains(lesson);
    }

    public int stage() {
        return moment.stage;
    }

    /** The flower stage if someone looked lately, or −1. */
    public int flowers() {
        int fact = Fact.FLOWER_STAGE.ordinal();
        return ages[fact] >= 0 && ages[fact] <= FLOWERS_FRESH_DAYS ? (int) numbers[fact] : -1;
    }

    public double load() {
        return moment.loadLeft;
    }

    public double budget() {
        return moment.loadBudget;
    }

    public boolean quiet(int days) {
        return moment.quietFor(days);
    }

    public int daysLeft() {
        return moment.subject.place().growingDaysLeft(moment.on);
    }

    /** The usual maximum of the day in °C; absolute zero where nothing is known. */
    public double warmest() {
        double celsius = moment.subject.place().maxCelsius(moment.on);
        return Double.isNaN(celsius) ? -273 : celsius;
    }

    public boolean withoutWinter() {
        return moment.subject.place().withoutWinter();
    }

    public boolean coolestWeeks() {
        return moment.subject.place().coolestWeeks(moment.on);
    }

    public boolean woodFrozen() {
        return moment.subject.place().woodFrozen(moment.on);
    }

    public boolean ballFrozen() {
        return moment.subject.place().ballFrozen(moment.on);
    }

    /** Whether nights come near the cold from which on the species is sheltered. */
    public boolean nearDangerousCold() {
        var shelter = moment.subject.traits().clocks().shelterBelowCelsius();
        return shelter != null && moment.subject.place().nightsBelow(shelter, moment.on);
    }

    public int heavy() {
        return moment.heavyThisSeason;
    }

    public double foliage() {
        return moment.foliageTaken;
    }

    public double root() {
        return moment.rootTaken;
    }
}
