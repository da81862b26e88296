package org.ripewood.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.Earlier;
import org.ripewood.core.growth.Proportion;
import org.ripewood.core.growth.TaperProfile;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Value;
import org.ripewood.records.LastReadings;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;

/** Base against plan, height against base, and whether the trunk thickens where it should not. */
final class TrunkFacts {

    private static final String FROM_PROFILE = "trunk diameters at marked heights";

    private TrunkFacts() {}

    static List<Evidence> of(TreeRecord record, Facts seen) {
        var evidence = new ArrayList<Evidence>();
        evidence.addAll(
                proportion(
                        Fact.TRUNK_BASE_SHARE,
                        seen.find(Fact.TRUNK_BASE_MM),
                        seen.find(Fact.TRUNK_TARGET_MM),
                        "trunk base and planned base"));
        evidence.addAll(
                proportion(
                        Fact.HEIGHT_TO_BASE,
                        seen.find(Fact.HEIGHT_MM),
                        seen.find(Fact.TRUNK_BASE_MM),
                        "height and trunk base"));
        evidence.addAll(taper(marks(record, seen)));
        return evidence;
    }

    private static List<Evidence> proportion(
            Fact fact, @Nullable Evidence part, @Nullable Evidence whole, String from) {
        if (part == null || whole == null) {
            return List.of();
        }
        double share = Proportion.of(amount(part.value()), amount(whole.value()));
        if (Double.isNaN(share)) {
            return List.of();
        }
        return List.of(
                Derived.number(
                        fact,
                        share,
                        Derived.oldest(Stream.of(part.observedOn(), whole.observedOn())),
                        Derived.sourceOf(List.of(part.source(), whole.source())),
                        from));
    }

    /** The diameters that count, at their heights; may be empty. */
    static TaperProfile profile(TreeRecord record, Facts seen) {
        return profile(marks(record, seen));
    }

    private static TaperProfile profile(List<Observation> marks) {
        return new TaperProfile(
                marks.stream()
                        .map(
                                mark ->
                                        new TaperProfile.Reading(
                                                LastReadings.heightMm(mark), amount(mark.value())))
                        .toList());
    }

    private static List<Observation> marks(TreeRecord record, Facts seen) {
        var height = seen.find(Fact.HEIGHT_MM);
        return LastReadings.marks(
                record.observations(),
                height == null ? null : new Earlier(height.observedOn(), amount(height.value())));
    }

    /** Fewer than two marks tell nothing. */
    private static List<Evidence> taper(List<Observation> marks) {
        if (marks.size() < 2) {
            return List.of();
        }
        var profile = profile(marks);
        var asOf = Derived.oldest(marks.stream().map(Observation::observedOn));
        var source = Derived.sourceOf(marks.stream().map(Observation::source).toList());
        var bulges = profile.bulges();
        var evidence = new ArrayList<Evidence>();
        evidence.add(
                Derived.flag(Fact.REVERSE_TAPER, !bulges.isEmpty(), asOf, source, FROM_PROFILE));
        if (!bulges.isEmpty()) {
            evidence.add(
                    Derived.number(
                            Fact.REVERSE_TAPER_HEIGHT_MM,
                            bulges.get(0).wide().heightMm(),
                            asOf,
                            source,
                            FROM_PROFILE));
        }
        return evidence;
    }

    private static double amount(Value value) {
        return ((Value.Number) value).amount();
    }
}
