package org.ripewood.core.progress;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What can be known of a tree. Titles and how to measure stand in the course content, by the same
 * code; kind, unit and plausible range stand here, because criteria are computed with them.
 *
 * <p>A derived fact is worked out from the record (wounds, works, containers) and not recorded by
 * hand; {@link #VIGOUR_INDEX} may also be an instructor's overall judgement.
 */
public enum Fact {
    // Strength
    VIGOUR_INDEX(Kind.NUMBER, "", 0, 100, Scope.TREE, true),
    SHOOT_EXTENSION_RATIO(Kind.NUMBER, "", 0, 5, Scope.TREE, false),
    SHOOT_EXTENSION_MM(Kind.NUMBER, "mm", 0, 10000, Scope.TREE, false),
    LEAF_COLOUR_GRADE(Kind.NUMBER, "", 0, 4, Scope.TREE, false),
    FOLIAGE_LOSS_PERCENT(Kind.NUMBER, "%", 0, 100, Scope.TREE, false),
    DIEBACK_PERCENT(Kind.NUMBER, "%", 0, 100, Scope.TREE, false),
    PEST_LEVEL(Kind.NUMBER, "", 0, 4, Scope.TREE, false),

    // Roots
    FIRM_IN_CONTAINER(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    ROOT_FILL_SHARE(Kind.NUMBER, "", 0, 1, Scope.TREE, false),
    ROOT_SPREAD_DEG(Kind.NUMBER, "°", 0, 360, Scope.TREE, false),
    ROOT_GAP_DEG(Kind.NUMBER, "°", 0, 360, Scope.TREE, false),
    CIRCLING_TURN(Kind.NUMBER, "", 0, 5, Scope.TREE, false),
    MATTED_ROOTS(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    ROOT_FLARE_EXPOSED(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    SACRIFICE_ROOTS_LEFT(Kind.NUMBER, "", 0, 50, Scope.TREE, false),

    // Trunk
    TRUNK_BASE_MM(Kind.NUMBER, "mm", 0, 2000, Scope.TREE, false),
    TRUNK_TARGET_MM(Kind.NUMBER, "mm", 0, 2000, Scope.TREE, false),
    HEIGHT_MM(Kind.NUMBER, "mm", 0, 5000, Scope.TREE, false),
    TRUNK_DIAMETER_MM(Kind.NUMBER, "mm", 0, 2000, Scope.HEIGHT, false),
    TRUNK_BASE_SHARE(Kind.NUMBER, "", 0, 10, Scope.TREE, true),
    HEIGHT_TO_BASE(Kind.NUMBER, "", 0, 200, Scope.TREE, true),
    REVERSE_TAPER(Kind.FLAG, "", 0, 0, Scope.TREE, true),
    REVERSE_TAPER_HEIGHT_MM(Kind.NUMBER, "mm", 0, 5000, Scope.TREE, true),
    LOW_BUD_BELOW_CUT(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    LEADER_SHARE(Kind.NUMBER, "", 0, 2, Scope.TREE, false),

    // Wounds
    WOUND_OPEN_MM(Kind.NUMBER, "mm", 0, 500, Scope.WOUND, false),
    OPEN_WOUNDS(Kind.NUMBER, "", 0, 500, Scope.TREE, true),
    LARGEST_OPENING_MM(Kind.NUMBER, "mm", 0, 500, Scope.TREE, true),
    SMALLEST_CLOSURE_PERCENT(Kind.NUMBER, "%", 0, 100, Scope.TREE, true),
    WOUND_STALLED(Kind.FLAG, "", 0, 0, Scope.TREE, true),
    FRESH_WOUNDS(Kind.NUMBER, "", 0, 500, Scope.TREE, true),
    WIDEST_OPEN_CUT_MM(Kind.NUMBER, "mm", 0, 500, Scope.TREE, false),
    PLANNED_CUT_MM(Kind.NUMBER, "mm", 0, 500, Scope.TREE, false),
    PLANNED_CUT_SHARE(Kind.NUMBER, "", 0, 2, Scope.TREE, false),
    SURPLUS_BRANCH(Kind.FLAG, "", 0, 0, Scope.TREE, false),

    // Branches
    BRANCH_DIAMETER_MM(Kind.NUMBER, "mm", 0, 1000, Scope.BRANCH, false),
    TRUNK_AT_BRANCH_MM(Kind.NUMBER, "mm", 0, 2000, Scope.BRANCH, false),
    GIRTH_RATIO_MAX(Kind.NUMBER, "", 0, 10, Scope.TREE, true),
    PRIMARY_BRANCHES(Kind.NUMBER, "", 0, 200, Scope.TREE, true),
    CANDIDATE_BRANCHES(Kind.NUMBER, "", 0, 20, Scope.TREE, false),
    INTERIOR_BUDS(Kind.NUMBER, "", 0, 200, Scope.TREE, false),
    BRANCH_FLEXIBLE(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    THICKEST_BEND_MM(Kind.NUMBER, "mm", 0, 200, Scope.TREE, false),
    SCION_REACHES(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    SCION_SHOOT_MM(Kind.NUMBER, "mm", 0, 50, Scope.TREE, false),
    BRANCH_MISSING(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    RAMIFICATION_ORDERS(Kind.NUMBER, "", 0, 8, Scope.TREE, false),
    INTERNODE_MM(Kind.NUMBER, "mm", 0, 200, Scope.TREE, false),
    BRANCHES_HOLD(Kind.FLAG, "", 0, 0, Scope.TREE, false),

    // Wire
    WIRE_ON(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    WIRE_DAYS(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    WIRE_MARK_MM(Kind.NUMBER, "mm", 0, 10, Scope.TREE, false),
    ANCHOR_FOUND(Kind.FLAG, "", 0, 0, Scope.TREE, false),

    // Container
    CONTAINER_KIND(true, "ground", "nursery", "training", "show"),
    MONTHS_IN_CONTAINER(Kind.NUMBER, "months", 0, 1200, Scope.TREE, true),
    SUBSTRATE_DRAINS(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    SOIL_MOIST(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    SOIL_BELOW_RIM_MM(Kind.NUMBER, "mm", 0, 200, Scope.TREE, false),

    // Design
    FRONT_MARK(false, "none", "tentative", "settled"),
    BRANCH_PLAN(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    DEADWOOD_PLAN(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    LIVE_VEIN_MARKED(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    LIVE_VEIN_SHARE(Kind.NUMBER, "", 0, 1, Scope.TREE, false),
    DEADWOOD_PRESENT(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    DEADWOOD_DRY(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    SHOW_PLANNED(Kind.FLAG, "", 0, 0, Scope.TREE, false),
    LAYER_WANTED(Kind.FLAG, "", 0, 0, Scope.TREE, false),

    // Said by an instructor
    TRAINING_STAGE(false, "establish", "develop", "structure", "refine", "show"),

    // Ledgers and clocks
    RECOVERY_LOAD(Kind.NUMBER, "", 0, 1000, Scope.TREE, true),
    DAYS_SINCE_HEAVY_WORK(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    HEAVY_WORKS_THIS_SEASON(Kind.NUMBER, "", 0, 100, Scope.TREE, true),
    FOLIAGE_REMOVED_SHARE(Kind.NUMBER, "", 0, 10, Scope.TREE, true),
    ROOT_REMOVED_SHARE(Kind.NUMBER, "", 0, 10, Scope.TREE, true),
    DAYS_SINCE_ROOT_WORK(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    DAYS_SINCE_CHOP(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    DAYS_SINCE_WIRING(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    DAYS_SINCE_CARVING(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    DAYS_SINCE_DEFOLIATION(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    DAYS_SINCE_FEEDING(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),
    DAYS_SINCE_SHOW_CONTAINER(Kind.NUMBER, "d", 0, 36600, Scope.TREE, true),

    // Season
    GROWTH_STAGE(Kind.NUMBER, "", 0, 99, Scope.TREE, false),
    FLOWER_STAGE(Kind.NUMBER, "", 0, 99, Scope.TREE, false);

    /** What sort of value a fact has. */
    public enum Kind {
        NUMBER,
        FLAG,
        WORD
    }

    /** What a reading of the fact belongs to. */
    public enum Scope {
        TREE,
        /** A height on the trunk, in mm above the root flare. */
        HEIGHT,
        WOUND,
        BRANCH
    }

    private static final Map<String, Fact> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toMap(Fact::code, Function.identity()));

    private final String code = name().toLowerCase(Locale.ROOT);
    private final String spoken = code.replace('_', ' ');
    private final Kind kind;
    private final String unit;
    private final double least;
    private final double most;
    private final Scope scope;
    private final boolean derived;

    // always List.of, which cannot be changed
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> words;

    Fact(Kind kind, String unit, double least, double most, Scope scope, boolean derived) {
        this.kind = kind;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.scope = scope;
        this.derived = derived;
        this.words = List.of();
    }

    Fact(boolean derived, String... words) {
        this.kind = Kind.WORD;
        this.unit = "";
        this.least = 0;
        this.most = 0;
        this.scope = Scope.TREE;
        this.derived = derived;
        this.words = List.of(words);
    }

    /** The fact of a code used in course content, such as {@code vigour_index}. */
    public static Optional<Fact> find(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    public String code() {
        return code;
    }

    /** Its code as plain words, for sentences of the core; titles stand in the course content. */
    String spoken() {
        return spoken;
    }

    public Kind kind() {
        return kind;
    }

    /**
     * The unit shown behind a number: {@code mm}, {@code %}, {@code °}, {@code d}; may be empty.
     */
    public String unit() {
        return unit;
    }

    /** The least plausible number. */
    public double least() {
        return least;
    }

    /** The greatest plausible number. */
    public double most() {
        return most;
    }

    public Scope scope() {
        return scope;
    }

    public boolean derived() {
        return derived;
    }

    /** Whether only an instructor may say it: a judgement of the tree as a whole. */
    public boolean instructorsWord() {
        return this == VIGOUR_INDEX || this == TRAINING_STAGE;
    }

    /** Whether it is said with a reason, since people act on it. */
    public boolean asksForReason() {
        return this == TRAINING_STAGE;
    }

    /** Whether a person may record it. */
    public boolean recordable() {
        return !derived || this == VIGOUR_INDEX;
    }

    /**
     * What a plan or wish counts as until somebody has said so: nothing planned, no front marked.
     * Null for everything that has to be looked at.
     */
    public @Nullable Value untilSaid() {
        return switch (this) {
            case SURPLUS_BRANCH,
                    BRANCH_MISSING,
                    BRANCH_PLAN,
                    DEADWOOD_PLAN,
                    LIVE_VEIN_MARKED,
                    SHOW_PLANNED,
                    LAYER_WANTED ->
                    Value.of(false);
            case FRONT_MARK -> Value.of("none");
            default -> null;
        };
    }

    /** The words a word fact may have, in their natural order. */
    public List<String> words() {
        return words;
    }

    /** Why a value cannot be this fact's, in words; null when it can. */
    public @Nullable String refusalOf(Value value) {
        if (value instanceof Value.Number number && kind == Kind.NUMBER) {
            return number.amount() >= least && number.amount() <= most
                    ? null
                    : "expected %s to %s, found %s"
                            .formatted(plain(least), plain(most), plain(number.amount()));
        }
        if (value instanceof Value.Flag && kind == Kind.FLAG) {
            return null;
        }
        if (value instanceof Value.Word word && kind == Kind.WORD) {
            return words.contains(word.word())
                    ? null
                    : "expected one of %s, found “%s”"
                            .formatted(String.join(", ", words), word.word());
        }
        return "expected a %s, found %s".formatted(kind.name().toLowerCase(Locale.ROOT), value);
    }

    private static String plain(double amount) {
        return amount == Math.rint(amount) ? String.valueOf((long) amount) : String.valueOf(amount);
    }
}
