package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ripewood.platform.problems.Suggestion;

/** What the files declare, and where they speak of it. */
final class Codes {

    private record Mention(Ref ref, FileFault ifMissing) {}

    private final Map<Ref, Place> declared = new LinkedHashMap<>();
    private final List<Mention> mentions = new ArrayList<>();

    /** Takes a code for a thing; a second thing of the same sort may not have it too. */
    Ref declare(Ref ref, Entry entry, String key) {
        var first = declared.putIfAbsent(ref, entry.place());
        if (first != null) {
            entry.fault(
                    key,
                    "%s is already the code of another %s in %s, line %d"
                            .formatted(ref.code(), word(ref), first.file(), first.line()));
        }
        return ref;
    }

    /** Notes that a code was used; the file of what it stands for may be read later. */
    Ref mention(Ref ref, Place place, String key) {
        mentions.add(new Mention(ref, place.fault(key, "")));
        return ref;
    }

    void check(Faults faults) {
        for (var mention : mentions) {
            var ref = mention.ref();
            if (!declared.containsKey(ref)) {
                var known =
                        declared.keySet().stream()
                                .filter(other -> other.kind() == ref.kind())
                                .map(Ref::code)
                                .toList();
                var at = mention.ifMissing();
                faults.add(
                        new FileFault(
                                at.file(),
                                at.line(),
                                "there is no %s %s in the files.%s"
                                        .formatted(
                                                word(ref),
                                                ref.code(),
                                                Suggestion.maybe(known, ref.code()))));
            }
        }
    }

    private static String word(Ref ref) {
        return ref.kind().name().toLowerCase(Locale.ROOT);
    }
}
