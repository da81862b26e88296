package org.ripewood.condition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.AgedVigour;
import org.ripewood.core.growth.SchoolLevel;
import org.ripewood.core.growth.ShootGrade;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.growth.VigourCap;
import org.ripewood.core.growth.VigourGrade;
import org.ripewood.core.growth.VigourIndex;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;

/**
 * Strength, from the grades that are known; what was seen longer ago counts less.
 *
 * <p>Shoots are measured once a year, so they date the index only when newer ones could have been
 * measured.
 */
final class VigourFacts {

    /** Growing days over which an instructor's judgement stands against a look that tells less. */
    private static final int JUDGEMENT_STANDS_DAYS = 120;

    private final Facts seen;
    private final LocalDate on;
    private final GrowingDays growing;
    private final ShootSeasons shoots;
    private final TreeKind kind;
    private final TreeRecord record;
    private final List<AgedVigour.Seen> looks = new ArrayList<>();
    private final List<LocalDate> dates = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private SchoolLevel school = SchoolLevel.NONE;

    private VigourFacts(TreeRecord record, Facts seen, TreeKind kind) {
        this.record = record;
        this.seen = seen;
        this.on = record.on();
        this.kind = kind;
        this.growing = kind.growing();
        this.shoots = new ShootSeasons(record, growing);
    }

    /**
     * What is worked out.
     *
     * @param told the ratio of the shoots where a series tells it, and the index where enough is
     *     known
     * @param held what stands in place of every judgement, where the one in force says more than
     *     was seen of the tree allows; null where it does not
     */
    record Found(List<Evidence> told, @Nullable Evidence held) {}

    static Found of(TreeRecord record, Facts seen, TreeKind kind) {
        var facts = new VigourFacts(record, seen, kind);
        var told = Stream.of(facts.ratio(), facts.index()).flatMap(Stream::ofNullable).toList();
        return new Found(told, facts.held());
    }

    /** The judgement held to what was seen of the tree; null where it needs no holding. */
    private @Nullable Evidence held() {
        var judged = seen.find(Fact.VIGOUR_INDEX);
        var cap = judged == null ? null : cap(judged.observedOn());
        if (judged == null || cap == null || seen.number(Fact.VIGOUR_INDEX) <= cap.most()) {
            return null;
        }
        return Derived.number(
                Fact.VIGOUR_INDEX,
                cap.most(),
                judged.observedOn(),
                judged.source() == Source.STUDENT ? Source.STUDENT : Source.DERIVED,
                "a judgement of %.0f, held to what %s allows"
                        .formatted(number(judged), cap.by().words()));
    }

    /** By looks that on the day of a judgement counted half at least, or came after it. */
    private @Nullable VigourCap cap(LocalDate judgedOn) {
        return VigourCap.of(
                        looks.stream()
                                .filter(
                                        look ->
                                                growing.between(look.on(), judgedOn)
                                                        <= look.of().halfLifeDays())
                                .toList())
                .orElse(null);
    }

    /** The measured ratio, as seen with the newest shoots; null without earlier seasons. */
    private @Nullable Evidence ratio() {
        var newest = newest();
        var ratio = shoots.ratio();
        if (newest == null || ratio == null) {
            return null;
        }
        var source = newest.seen().source();
        return Derived.number(
                Fact.SHOOT_EXTENSION_RATIO,
                ratio,
                newest.seen().observedOn(),
                source == Source.STUDENT ? Source.STUDENT : Source.DERIVED,
                "shoots season by season");
    }

    private @Nullable Evidence index() {
        shoot();
        look(Fact.FOLIAGE_LOSS_PERCENT, VigourGrade.FOLIAGE, VigourIndex::lossGrade);
        look(Fact.LEAF_COLOUR_GRADE, VigourGrade.COLOUR, grade -> grade);
        look(Fact.DIEBACK_PERCENT, VigourGrade.DIEBACK, VigourIndex::diebackGrade);
        var vigour = AgedVigour.of(looks, on, growing).orElse(null);
        var told = vigour == null ? OptionalDouble.empty() : vigour.told();
        if (vigour == null || told.isEmpty()) {
            return null;
        }
        var source = Derived.sourceOf(sources);
        if (source == Source.STUDENT || vigour.hasGaps()) {
            var judged = judged();
            if (!Double.isNaN(judged) && vigour.index() >= judged) {
                return null;
            }
        }
        return Derived.number(
                Fact.VIGOUR_INDEX,
                told.getAsDouble(),
                Derived.oldest(dates.stream()),
                source,
                from(vigour.hasGaps()));
    }

    private String from(boolean gaps) {
        var parts =
                gaps
                        ? "three of shoots, foliage, colour and dead twigs"
                        : "shoots, foliage, colour and dead twigs";
        return school.isEnough()
                ? "%s; shoots compared with %d trees of this species at the school and the content's value"
                        .formatted(parts, school.trees())
                : parts;
    }

    /**
     * What an instructor judged and the tree has not outgrown; NaN for nothing. It stands against a
     * student's look or one with gaps, unless that shows the tree weaker.
     */
    private double judged() {
        var judged = seen.find(Fact.VIGOUR_INDEX);
        if (judged == null
                || judged.source() != Source.INSTRUCTOR
                || growing.between(judged.observedOn(), on) > JUDGEMENT_STANDS_DAYS) {
            return Double.NaN;
        }
        var cap = cap(judged.observedOn());
        return cap == null ? number(judged) : Math.min(cap.most(), number(judged));
    }

    private void shoot() {
        var newest = newest();
        var entered = enteredRatio();
        if (newest != null) {
            var ratio = shoots.ratio();
            if (ratio == null && entered != null && sameSeason(entered, newest.seen())) {
                ratio = number(entered);
            }
            grade(
                    newest.seen(),
                    new ShootGrade(newest.mm(), ratio, newest.inGround(), heldAgainst(newest)));
        } else if (entered != null) {
            grade(entered, new ShootGrade(null, number(entered), false, null));
        }
    }

    /** What the kind makes where the shoots grew, and that the school's trees were asked. */
    private @Nullable ShootLengths heldAgainst(ShootSeasons.Shoots newest) {
        var shoots = kind.shoots();
        if (shoots == null) {
            return null;
        }
        school = shoots.level(newest.inGround());
        return shoots.lengths(newest.inGround());
    }

    /** The newest measured shoots; null when a ratio was entered for a later season. */
    private ShootSeasons.@Nullable Shoots newest() {
        var newest = shoots.newest();
        var entered = enteredRatio();
        return newest == null
                        || (entered != null
                                && shoots.seasonOf(entered.observedOn()).isAfter(newest.season()))
                ? null
                : newest;
    }

    private boolean sameSeason(Observation one, Observation other) {
        return shoots.seasonOf(one.observedOn()).equals(shoots.seasonOf(other.observedOn()));
    }

    private @Nullable Observation enteredRatio() {
        return record.seen(Fact.SHOOT_EXTENSION_RATIO)
                .max(
                        Comparator.comparing(Observation::observedOn)
                                .thenComparing(Observation::source)
                                .thenComparing(Observation::id))
                .orElse(null);
    }

    private static double number(Evidence seen) {
        return ((Value.Number) seen.value()).amount();
    }

    private static double number(Observation seen) {
        return ((Value.Number) seen.value()).amount();
    }

    private void grade(Observation measured, ShootGrade shoot) {
        shoot.value()
                .ifPresent(
                        grade -> {
                            var day = measured.observedOn();
                            looks.add(new AgedVigour.Seen(VigourGrade.SHOOT, grade, day));
                            sources.add(measured.source());
                            if (!shoots.upToDate(day)) {
                                dates.add(day);
                            }
                        });
    }

    private void look(Fact fact, VigourGrade of, DoubleUnaryOperator grade) {
        var evidence = seen.find(fact);
        if (evidence != null) {
            var day = evidence.observedOn();
            looks.add(new AgedVigour.Seen(of, grade.applyAsDouble(seen.number(fact)), day));
            sources.add(evidence.source());
            dates.add(day);
        }
    }
}
