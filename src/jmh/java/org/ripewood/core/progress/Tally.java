package org.ripewood.core.progress;

import org.jspecify.annotations.Nullable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers what rules say of one tree; public, because rule consequences write to it. */
public final class Tally {

    private final List<TechniqueText> texts;
    private final @Nullable Outcome[] settled;
    private final @Nullable List<String>[] against;
    private final int[] truth;
    private final int[] season;
    private final boolean[] unskilled;

    @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of lists
    Tally(List<TechniqueText> texts) {
        this.texts = texts;
        this.settled = new Outcome[texts.size()];
        this.against = new List[texts.size()];
        this.truth = new int[texts.size()];
        this.season = new int[texts.size()];
        this.unskilled = new boolean[texts.size()];
        Arrays.fill(truth, Outcome.YES);
        Arrays.fill(season, Outcome.YES);
    }

    public void done(int place) {
        settled[place] = new Outcome(texts.get(place).code(), Verdict.DONE, List.of());
    }

    public void notNeeded(int place, String key) {
        settled[place] = new Outcome(texts.get(place).code(), Verdict.NOT_NEEDED, List.of(key));
    }

    public void check(int place, String key, int found) {
        against(place, key);
        truth[place] = Math.min(truth[place], found);
    }

    public void season(int place, int found) {
        against(place, "season");
        season[place] = found;
    }

    public void unskilled(int place) {
        against(place, "skill");
        unskilled[place] = true;
    }

    private void against(int place, String key) {
        var keys = against[place];
        if (keys == null) {
            keys = new ArrayList<>();
            against[place] = keys;
        }
        keys.add(key);
    }

    List<Outcome> outcomes() {
        var outcomes = new ArrayList<Outcome>(settled.length);
        for (int i = 0; i < settled.length; i++) {
            var known = settled[i];
            outcomes.add(known != null ? known : weigh(i));
        }
        return outcomes;
    }

    private Outcome weigh(int place) {
        var keys = against[place];
        return new Outcome(
                texts.get(place).code(),
                Outcome.verdict(truth[place], !unskilled[place], season[place]),
                keys == null ? List.of() : keys);
    }
}
