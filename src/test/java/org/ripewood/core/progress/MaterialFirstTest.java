package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.ripewood.core.progress.Bench.DAY;
import static org.ripewood.core.progress.Bench.atLeast;
import static org.ripewood.core.progress.Bench.atMost;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;

/** The material comes before styling, whatever was entered of a tree. */
@Tag("fast")
class MaterialFirstTest {

    private static final Requirement BULGE = new Requirement.Is(Value.of(true));

    private final RuleOf look = new RuleOf("look");
    private final RuleOf choosing = new RuleOf("choosing");
    private final RuleOf wiring = new RuleOf("wiring");

    MaterialFirstTest() {
        choosing.after = List.of("look");
        choosing.neededWhen = new Condition.Test(Fact.PRIMARY_BRANCHES, new Requirement.AtMost(2));
        choosing.criteria =
                List.of(
                        atLeast(Fact.TRUNK_BASE_SHARE, 0.9),
                        atLeast(Fact.VIGOUR_INDEX, 99),
                        atMost(Fact.LARGEST_OPENING_MM, 15));
        wiring.after = List.of("choosing");
        wiring.purpose = TechniqueRule.Purpose.STYLING;
        wiring.criteria = List.of(atMost(Fact.LARGEST_OPENING_MM, 8));
    }

    @Test
    void aPredecessorThatIsNotNeededHandsOnWhatItAsksOfTheMaterial() {
        var tree = branched().saw(Fact.TRUNK_BASE_SHARE, 0.2);
        tree.signedOff.put("look", DAY.minusDays(50));
        var standing = wiringOf(tree, look, choosing);
        assertThat(standing.verdict()).isEqualTo(Verdict.HELD);
        assertThat(standing.against())
                .extracting(Reason::key)
                .containsExactly("trunk_base_share.AtLeast");
    }

    @Test
    void strengthForTheWorkItselfIsNotHandedOn() {
        var tree = branched().saw(Fact.TRUNK_BASE_SHARE, 1).saw(Fact.VIGOUR_INDEX, 70);
        tree.signedOff.put("look", DAY.minusDays(50));
        assertThat(wiringOf(tree, look, choosing).verdict()).isEqualTo(Verdict.READY);
    }

    @Test
    void theOwnCriterionWinsOverTheOneHandedOn() {
        var tree = branched().saw(Fact.TRUNK_BASE_SHARE, 1).saw(Fact.LARGEST_OPENING_MM, 12);
        tree.signedOff.put("look", DAY.minusDays(50));
        assertThat(wiringOf(tree, look, choosing).against())
                .extracting(reason -> ((Reason.OfCriterion) reason).required())
                .containsExactly(new Requirement.AtMost(8));
    }

    @Test
    void itHandsItsOwnPredecessorsOn() {
        var tree = branched().saw(Fact.TRUNK_BASE_SHARE, 1);
        assertThat(wiringOf(tree, look, choosing).against())
                .extracting(Reason::key)
                .containsExactly("after.look");
    }

    @Test
    void onceSignedOffItHandsNothingOn() {
        var tree = branched().saw(Fact.TRUNK_BASE_SHARE, 0.2);
        tree.signedOff.put("choosing", DAY.minusDays(50));
        assertThat(wiringOf(tree, look, choosing).verdict()).isEqualTo(Verdict.READY);
    }

    /** The way through an unneeded technique may be longer than the way past it. */
    @Test
    void aPredecessorIsAskedWhicheverWayLeadsToIt() {
        var planning = new RuleOf("planning");
        planning.after = List.of("choosing");
        planning.neededWhen = choosing.neededWhen;
        wiring.after = List.of("planning", "repotting");
        var repotting = new RuleOf("repotting");
        repotting.after = List.of("look");
        var tree = branched().saw(Fact.TRUNK_BASE_SHARE, 1);
        tree.signedOff.put("repotting", DAY.minusDays(50));
        assertThat(wiringOf(tree, look, choosing, planning, repotting).against())
                .extracting(Reason::key)
                .containsExactly("after.look");
    }

    @Test
    void nothingIsStyledWhileTheMaterialNeedsWork() {
        var thinning = thinning();
        var tree = chosen().saw(Fact.REVERSE_TAPER, Value.of(true));
        var standing = wiringOf(tree, look, choosing, thinning);
        assertThat(standing.verdict()).isEqualTo(Verdict.HELD);
        assertThat(standing.against()).containsExactly(new Reason.OfDevelopment("thinning"));
    }

    @Test
    void workOnTheMaterialThatDidNotHelpHoldsStylingAllTheSame() {
        var tree = chosen().saw(Fact.REVERSE_TAPER, Value.of(true));
        tree.signedOff.put("thinning", DAY.minusDays(9));
        assertThat(wiringOf(tree, look, choosing, thinning()).verdict()).isEqualTo(Verdict.HELD);
    }

    @Test
    void onlyStylingWaitsForTheMaterial() {
        wiring.purpose = TechniqueRule.Purpose.OTHER;
        var tree = chosen().saw(Fact.REVERSE_TAPER, Value.of(true));
        assertThat(wiringOf(tree, look, choosing, thinning()).verdict()).isEqualTo(Verdict.READY);
    }

    @Test
    void workForOtherSpeciesHoldsNothing() {
        var thinning = thinning();
        thinning.groups = Set.of("conifer");
        var tree = chosen().saw(Fact.REVERSE_TAPER, Value.of(true));
        assertThat(wiringOf(tree, look, choosing, thinning).verdict()).isEqualTo(Verdict.READY);
    }

    @Test
    void itIsToldWhenTheWorkOnTheMaterialCouldBeDone() {
        var tree = chosen().saw(Fact.REVERSE_TAPER, Value.of(true));
        var opening =
                book(look, choosing, thinning(), wiring)
                        .openings(tree.make(), DAY)
                        .of("wiring")
                        .orElseThrow();
        assertThat(opening.waits()).hasSize(1);
        assertThat(opening.waits().get(0).before()).isNotNull();
    }

    @Test
    void workOnTheMaterialCannotComeAfterStyling() {
        var thinning = thinning();
        thinning.after = List.of("wiring");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> book(look, choosing, wiring, thinning))
                .withMessageContaining("thinning is work on the material");
    }

    private static RuleOf thinning() {
        var thinning = new RuleOf("thinning");
        thinning.purpose = TechniqueRule.Purpose.DEVELOPMENT;
        thinning.neededWhen = new Condition.Test(Fact.REVERSE_TAPER, BULGE);
        return thinning;
    }

    private static TreeOf branched() {
        return new TreeOf().saw(Fact.PRIMARY_BRANCHES, 3).saw(Fact.LARGEST_OPENING_MM, 0);
    }

    private static TreeOf chosen() {
        var tree = branched();
        tree.signedOff.put("choosing", DAY.minusDays(50));
        return tree;
    }

    private Standing wiringOf(TreeOf tree, RuleOf... before) {
        var rules = new ArrayList<>(List.of(before));
        rules.add(wiring);
        return book(rules.toArray(RuleOf[]::new)).standing(tree.make(), "wiring", DAY);
    }

    private static Rulebook book(RuleOf... rules) {
        return Rulebook.compile(
                List.of(rules).stream().map(RuleOf::make).toList(), List.of(Bench.MAPLE));
    }
}
