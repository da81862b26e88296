package org.ripewood.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.Change.Kind;

/** What one transaction has done so far. */
final class Collected {

    /** A deed with the person it is told of; null for whoever asks. */
    record Noted(Deed deed, @Nullable Long personId) {}

    private record Group(String thing, Kind kind) {}

    private final List<Noted> deeds = new ArrayList<>();
    private final Map<Group, List<Long>> ids = new LinkedHashMap<>();
    private final Map<Group, Integer> withoutId = new LinkedHashMap<>();

    void deed(Deed deed, @Nullable Long personId) {
        deeds.add(new Noted(deed, personId));
    }

    void row(String thing, Kind kind, @Nullable Long id) {
        var group = new Group(thing, kind);
        if (id == null) {
            rows(thing, kind, 1);
        } else {
            ids.computeIfAbsent(group, unused -> new ArrayList<>()).add(id);
        }
    }

    void rows(String thing, Kind kind, int amount) {
        withoutId.merge(new Group(thing, kind), amount, Integer::sum);
    }

    /** The first takes the changes; without one it is whoever asks who changed rows. */
    List<Noted> deeds() {
        return deeds.isEmpty() ? List.of(new Noted(Deed.CHANGED, null)) : List.copyOf(deeds);
    }

    /** Rows changed alike, ids that follow each other as one. */
    List<Change> changes() {
        var changes = new ArrayList<Change>();
        ids.forEach((group, found) -> addRuns(group, found, changes));
        withoutId.forEach(
                (group, amount) ->
                        changes.add(new Change(group.thing(), group.kind(), null, null, amount)));
        return changes;
    }

    private void addRuns(Group group, List<Long> found, List<Change> changes) {
        var fresh =
                new HashSet<>(ids.getOrDefault(new Group(group.thing(), Kind.INSERTED), List.of()));
        var sorted =
                found.stream()
                        // what is new was not changed as well, however it came to be
                        .filter(id -> group.kind() != Kind.CHANGED || !fresh.contains(id))
                        .distinct()
                        .sorted()
                        .toList();
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            if (i == sorted.size() || sorted.get(i) != sorted.get(i - 1) + 1) {
                changes.add(
                        new Change(
                                group.thing(),
                                group.kind(),
                                sorted.get(from),
                                sorted.get(i - 1),
                                i - from));
                from = i;
            }
        }
    }
}
