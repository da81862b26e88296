package org.ripewood.transfer;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.platform.Actor;
import org.ripewood.steps.Step;

/** What has been entered so far, by the code the files give it. */
final class ImportedIds {

    /** What something stands on was itself refused; that fault is told, this one is not. */
    static final class NotEntered extends RuntimeException {
        NotEntered(Ref ref) {
            super(ref + " was not entered");
        }
    }

    private final Map<Ref, Long> ids = new HashMap<>();
    private final Map<Ref, Actor> actors = new HashMap<>();
    private final Map<Ref, Step> steps = new HashMap<>();

    void put(Ref ref, long id) {
        ids.put(ref, id);
    }

    void put(Ref ref, Actor actor) {
        ids.put(ref, actor.personId());
        actors.put(ref, actor);
    }

    void put(Ref ref, Step step) {
        steps.put(ref, step);
    }

    /** Ids of all that was entered of a kind. */
    Set<Long> ids(Ref.Kind kind) {
        return ids.entrySet().stream()
                .filter(entry -> entry.getKey().kind() == kind)
                .map(Map.Entry::getValue)
                .collect(Collectors.toSet());
    }

    long id(Ref ref) {
        return known(ids, ref);
    }

    Actor actor(Ref ref) {
        return known(actors, ref);
    }

    /**
     * A step, until it is put back as it has become: when what should happen to it is refused, what
     * happened afterwards is not tried.
     */
    Step take(Ref ref) {
        var step = known(steps, ref);
        steps.remove(ref);
        return step;
    }

    private static <V> V known(Map<Ref, V> entered, Ref ref) {
        var value = entered.get(ref);
        if (value == null) {
            throw new NotEntered(ref);
        }
        return value;
    }
}
