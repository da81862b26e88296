package org.ripewood.firstlook;

import static org.ripewood.core.progress.Fact.CANDIDATE_BRANCHES;
import static org.ripewood.core.progress.Fact.CIRCLING_TURN;
import static org.ripewood.core.progress.Fact.CONTAINER_KIND;
import static org.ripewood.core.progress.Fact.DIEBACK_PERCENT;
import static org.ripewood.core.progress.Fact.FIRM_IN_CONTAINER;
import static org.ripewood.core.progress.Fact.FOLIAGE_LOSS_PERCENT;
import static org.ripewood.core.progress.Fact.FRONT_MARK;
import static org.ripewood.core.progress.Fact.HEIGHT_MM;
import static org.ripewood.core.progress.Fact.HEIGHT_TO_BASE;
import static org.ripewood.core.progress.Fact.LARGEST_OPENING_MM;
import static org.ripewood.core.progress.Fact.LEAF_COLOUR_GRADE;
import static org.ripewood.core.progress.Fact.MONTHS_IN_CONTAINER;
import static org.ripewood.core.progress.Fact.OPEN_WOUNDS;
import static org.ripewood.core.progress.Fact.PEST_LEVEL;
import static org.ripewood.core.progress.Fact.REVERSE_TAPER;
import static org.ripewood.core.progress.Fact.ROOT_FLARE_EXPOSED;
import static org.ripewood.core.progress.Fact.SHOOT_EXTENSION_MM;
import static org.ripewood.core.progress.Fact.SHOOT_EXTENSION_RATIO;
import static org.ripewood.core.progress.Fact.SMALLEST_CLOSURE_PERCENT;
import static org.ripewood.core.progress.Fact.SOIL_MOIST;
import static org.ripewood.core.progress.Fact.SUBSTRATE_DRAINS;
import static org.ripewood.core.progress.Fact.TRUNK_BASE_MM;
import static org.ripewood.core.progress.Fact.TRUNK_BASE_SHARE;
import static org.ripewood.core.progress.Fact.VIGOUR_INDEX;
import static org.ripewood.core.progress.Fact.WIDEST_OPEN_CUT_MM;
import static org.ripewood.core.progress.Fact.WIRE_ON;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;

/**
 * What a teacher asks of a tree never seen before, in the order of asking. All can be answered by
 * eye, with a rule and with a finger. The choice is of those facts that decide most verdicts of the
 * course content; the numbers behind words are common practice, no source.
 */
public enum LookQuestion {
    TWIGS(
            "Is it alive to the tips?",
            "Scratch the bark of about twenty twigs all over the crown with a fingernail. Moist and green is alive,"
                    + " dry and brown is dead. Leave out twigs shaded out deep inside.",
            Set.of(DIEBACK_PERCENT),
            List.of(
                    alive("all", "All are alive", 0, 85),
                    alive("tenth", "About one in ten is dead", 10, 65),
                    alive("quarter", "About a quarter is dead", 25, 45),
                    alive("half", "Half or more are dead", 55, 20))),
    LEAVES(
            "How do leaves or needles look?",
            "Stand back, look from two sides in daylight, and think of a healthy tree of this kind. Do not count"
                    + " leaves that were cut off on purpose.",
            Set.of(LEAF_COLOUR_GRADE, FOLIAGE_LOSS_PERCENT),
            List.of(
                    leaves("full", "Full, and of the usual colour", 4, 0, 85),
                    leaves("thin", "Usual colour, but about a quarter is missing", 4, 25, 60),
                    leaves("pale", "Full, but clearly pale", 2, 0, 50),
                    leaves("poor", "Thin and yellow or brown", 1, 45, 25))),
    CONTAINER(
            "What does it stand in?",
            "Choose how long it has stood in it first, then tap what it stands in.",
            Set.of(CONTAINER_KIND),
            List.of(
                    container("nursery", "Nursery pot, deep and plain"),
                    container("training", "Training pot or box, wide and low"),
                    container("show", "Show container, made to be looked at"),
                    container("ground", "Open ground"))),
    FIRM(
            "Does it stand firm?",
            "Hold the container, take the trunk just above the soil between two fingers, and rock it gently.",
            Set.of(FIRM_IN_CONTAINER),
            List.of(
                    flag("firm", "Trunk and soil move as one", FIRM_IN_CONTAINER, true),
                    flag(
                            "rocks",
                            "It rocks, a crack opens at the foot",
                            FIRM_IN_CONTAINER,
                            false))),
    ROOTS(
            "Do thick roots run round?",
            "Look at the surface and the rim, and at the side of the ball if it slides out whole. Follow the"
                    + " thickest root that runs round the trunk or along the wall. Do not force the ball out.",
            Set.of(CIRCLING_TURN),
            List.of(
                    number("none", "None runs round", CIRCLING_TURN, 0),
                    number("quarter", "About a quarter of the way", CIRCLING_TURN, 0.25),
                    number("half", "About half of the way", CIRCLING_TURN, 0.5),
                    number("whole", "All the way round", CIRCLING_TURN, 1))),
    FLARE(
            "Can you see where the trunk widens into roots?",
            "Brush loose soil and moss aside with a finger. Do not dig.",
            Set.of(ROOT_FLARE_EXPOSED),
            List.of(
                    flag("round", "Yes, all the way round", ROOT_FLARE_EXPOSED, true),
                    flag("partly", "Only on one side", ROOT_FLARE_EXPOSED, false),
                    flag(
                            "buried",
                            "No, it goes into the soil like a post",
                            ROOT_FLARE_EXPOSED,
                            false))),
    TRUNK(
            "How thick is the trunk, and how tall is the tree?",
            "Hold a rule against the trunk just above the roots, from the front and from the side, and take the"
                    + " mean. Measure the height from there to the top of the living crown.",
            Set.of(TRUNK_BASE_MM, HEIGHT_MM),
            List.of(),
            List.of(
                    new LookNumber("baseMm", "Trunk base, mm", "Just above the roots.", false),
                    new LookNumber("heightMm", "Height, mm", "Along a straight rule.", false),
                    new LookNumber(
                            "targetMm",
                            "Planned base, mm",
                            "Only where your instructor has agreed to it. A sixth of the planned height is usual.",
                            true)),
            List.of(
                    Map.of(HEIGHT_TO_BASE, Value.of(6), TRUNK_BASE_SHARE, Value.of(1)),
                    Map.of(HEIGHT_TO_BASE, Value.of(20), TRUNK_BASE_SHARE, Value.of(0.3)))),
    LINE(
            "Does the trunk grow thinner all the way up?",
            "Measure its thickness at two places, away from knots and cuts.",
            Set.of(REVERSE_TAPER),
            List.of(),
            List.of(
                    new LookNumber("lowMm", "Thickness at a third of the height, mm", "", false),
                    new LookNumber("highMm", "Thickness at two thirds, mm", "", false)),
            List.of(Map.of(REVERSE_TAPER, Value.of(false)), Map.of(REVERSE_TAPER, Value.of(true)))),
    CUTS(
            "How wide is the widest cut that is still open?",
            "Look over trunk and branches from all sides for bare wood. Is it wider than a pencil, about 8 mm, measure"
                    + " it across the grain: the whole scar from bark to bark, and the bare wood that is left in it.",
            Set.of(WIDEST_OPEN_CUT_MM),
            List.of(
                    number("none", "No bare wood at all", WIDEST_OPEN_CUT_MM, 0),
                    number("narrow", "Bare wood, up to 8 mm wide", WIDEST_OPEN_CUT_MM, 8)),
            List.of(
                    new LookNumber(
                            "scarMm", "Whole scar of the widest, mm", "With its new bark.", false),
                    new LookNumber("openMm", "Bare wood in it, mm", "0 when it is closed.", false)),
            List.of(
                    Map.of(
                            LARGEST_OPENING_MM,
                            Value.of(25),
                            OPEN_WOUNDS,
                            Value.of(1),
                            SMALLEST_CLOSURE_PERCENT,
                            Value.of(10)))),
    SHOOTS(
            "How long are the shoots of the last growth?",
            "Choose five uncut shoots in full light in the upper third. Measure each from the ring of bud scars to"
                    + " the tip, and take the mean. The piece below the ring grew the season before.",
            Set.of(SHOOT_EXTENSION_MM),
            List.of(),
            List.of(
                    new LookNumber("shootMm", "Last growth, mm", "The mean of five.", false),
                    new LookNumber(
                            "shootBeforeMm",
                            "The season before, mm",
                            "The same five shoots.",
                            true)),
            List.of(
                    Map.of(VIGOUR_INDEX, Value.of(85), SHOOT_EXTENSION_RATIO, Value.of(1)),
                    Map.of(VIGOUR_INDEX, Value.of(30), SHOOT_EXTENSION_RATIO, Value.of(0.4)))),
    PESTS(
            "Do you find pests or disease?",
            "Look under leaves, in forks and along the bark, and tap a twig over white paper.",
            Set.of(PEST_LEVEL),
            List.of(
                    number("none", "None", PEST_LEVEL, 0),
                    number("traces", "A few, on one place", PEST_LEVEL, 1),
                    number("some", "Some, on several branches", PEST_LEVEL, 2),
                    number("heavy", "Many, and the tree shows harm", PEST_LEVEL, 3))),
    WATER(
            "How does the soil take water?",
            "Push a wooden stick to half the depth and pull it out after five minutes: is it dark with moisture?"
                    + " Then fill the container to the rim once and watch.",
            Set.of(SUBSTRATE_DRAINS),
            List.of(
                    answer(
                            "runs",
                            "Moist, and water is gone in about ten seconds",
                            Map.of(SOIL_MOIST, Value.of(true), SUBSTRATE_DRAINS, Value.of(true))),
                    flag("dry", "The stick came out dry", SOIL_MOIST, false),
                    flag("stands", "Water stands on the surface", SUBSTRATE_DRAINS, false))),
    WIRE(
            "Is there wire on the tree?",
            "Look over trunk, branches and twigs. Ties that hold the roots in the container do not count.",
            Set.of(WIRE_ON),
            List.of(
                    flag("none", "No wire", WIRE_ON, false),
                    flag("on", "Yes, shaping wire or a guy wire", WIRE_ON, true))),
    BRANCHES(
            "How many shoots grow from one place?",
            "Look along the trunk from node to node, and take the place with most.",
            Set.of(CANDIDATE_BRANCHES),
            List.of(
                    number("one", "One, nowhere more", CANDIDATE_BRANCHES, 1),
                    number("two", "Two", CANDIDATE_BRANCHES, 2),
                    number("more", "Three or more", CANDIDATE_BRANCHES, 3))),
    FRONT(
            "Is there a side to look at it from?",
            "Turn it once round at eye level. A front shows the widest foot and the line of the trunk.",
            Set.of(FRONT_MARK),
            List.of(
                    word("none", "Not yet", FRONT_MARK, "none"),
                    word("tentative", "One side, marked with a label", FRONT_MARK, "tentative")));

    /** More than these nobody answers in ten minutes. */
    public static final int MOST = 12;

    private final String title;
    private final String how;

    // sets and lists that cannot be changed
    @SuppressWarnings("ImmutableEnumChecker")
    private final Set<Fact> about;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<LookAnswer> answers;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<LookNumber> numbers;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Map<Fact, Value>> extremes;

    LookQuestion(String title, String how, Set<Fact> about, List<LookAnswer> answers) {
        this(title, how, about, answers, List.of(), List.of());
    }

    LookQuestion(
            String title,
            String how,
            Set<Fact> about,
            List<LookAnswer> answers,
            List<LookNumber> numbers,
            List<Map<Fact, Value>> extremes) {
        this.title = title;
        this.how = how;
        this.about = Set.copyOf(about);
        this.answers = List.copyOf(answers);
        this.numbers = List.copyOf(numbers);
        this.extremes = List.copyOf(extremes);
    }

    private static LookAnswer answer(String code, String label, Map<Fact, Value> seen) {
        return new LookAnswer(code, label, seen, Map.of());
    }

    private static LookAnswer alive(String code, String label, double dead, double vigour) {
        return new LookAnswer(
                code,
                label,
                Map.of(DIEBACK_PERCENT, Value.of(dead)),
                Map.of(VIGOUR_INDEX, Value.of(vigour)));
    }

    private static LookAnswer leaves(
            String code, String label, double colour, double missing, double vigour) {
        return new LookAnswer(
                code,
                label,
                Map.of(
                        LEAF_COLOUR_GRADE,
                        Value.of(colour),
                        FOLIAGE_LOSS_PERCENT,
                        Value.of(missing)),
                Map.of(VIGOUR_INDEX, Value.of(vigour)));
    }

    /** A container is recorded as such, and the facts follow from that. */
    private static LookAnswer container(String kind, String label) {
        return new LookAnswer(
                kind,
                label,
                Map.of(),
                Map.of(CONTAINER_KIND, Value.of(kind), MONTHS_IN_CONTAINER, Value.of(12)));
    }

    private static LookAnswer flag(String code, String label, Fact fact, boolean is) {
        return answer(code, label, Map.of(fact, Value.of(is)));
    }

    private static LookAnswer number(String code, String label, Fact fact, double amount) {
        return answer(code, label, Map.of(fact, Value.of(amount)));
    }

    private static LookAnswer word(String code, String label, Fact fact, String word) {
        return answer(code, label, Map.of(fact, Value.of(word)));
    }

    /** Names it in addresses and answers. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The question of a code. */
    public static Optional<LookQuestion> find(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }

    /** The question in plain words. */
    public String title() {
        return title;
    }

    /** How to look. */
    public String how() {
        return how;
    }

    /** Facts that answer it. */
    public Set<Fact> about() {
        return about.isEmpty() ? Set.of() : EnumSet.copyOf(about);
    }

    /** Answers to choose by their pictures; none where only a length answers it. */
    public List<LookAnswer> answers() {
        return answers;
    }

    /** The answer of a code. */
    public Optional<LookAnswer> answer(String code) {
        return answers.stream().filter(one -> one.code().equals(code)).findFirst();
    }

    /** Lengths to be read; none where pictures answer it. */
    public List<LookNumber> numbers() {
        return numbers;
    }

    /** Whether it asks as well how long ago something was. */
    public boolean asksAge() {
        return this == CONTAINER || this == CUTS;
    }

    /** What answers would make known, the best and the poorest among them. */
    List<Map<Fact, Value>> outcomes() {
        return numbers.isEmpty() ? answers.stream().map(LookQuestion::known).toList() : extremes;
    }

    private static Map<Fact, Value> known(LookAnswer answer) {
        var known = new EnumMap<Fact, Value>(Fact.class);
        known.putAll(answer.shows());
        known.putAll(answer.seen());
        return known;
    }
}
