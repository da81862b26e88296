package org.ripewood.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.ripewood.School.TODAY;
import static org.ripewood.materials.Goods.came;
import static org.ripewood.materials.Goods.counted;
import static org.ripewood.materials.Goods.went;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.Span;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

@QuarkusTest
@TestProfile(SchoolProfile.class)
class MaterialsTest {

    private static final PageRequest FIRST_PAGE = new PageRequest(0, 50);

    @Inject School school;
    @Inject Materials materials;

    private Actor teacher;

    @BeforeEach
    void openTheSchool() {
        teacher = school.person("Tess Teacher", Role.INSTRUCTOR);
    }

    @Test
    void whatIsEnteredIsKept() {
        var oval = materials.enter(teacher, Goods.oval(400, 300, 80, 15), 2.0);
        assertThat(materials.get(teacher, oval.id())).isEqualTo(oval);
        assertThat(oval.amount()).isEqualByComparingTo("2");
        assertThat(oval.unit()).isEqualTo("pieces");
        assertThat(oval.changedById()).isEqualTo(teacher.personId());
        var container = (StockDetail.Container) oval.detail();
        assertThat(container.sizes().bottomWidthMm()).as("upright walls").isEqualTo(300);
        assertThat(container.sizes().lipMm()).isEqualTo(15);
        assertThat(container.massKg()).isEqualTo(2.5);
        var bark = materials.enter(teacher, Goods.bark(), null);
        assertThat(bark.amount()).isZero();
        var substrate = (StockDetail.Substrate) bark.detail();
        assertThat(substrate.dryKgPerLitre()).isEqualTo(new Span(0.18, 0.18));
        assertThat(substrate.capacityShare()).isEqualTo(new Span(0.48, 0.48));
        var wire = materials.enter(teacher, new NewStockWire(WireMetal.COPPER, 9.9), 500.0);
        assertThat(wire.name()).isEqualTo("copper wire 9.9 mm");
        assertThat(wire.detail()).isEqualTo(new StockDetail.Wire(WireMetal.COPPER, 9.9));
        var paste = materials.enter(teacher, Goods.supply(), 250.5);
        assertThat(paste.unit()).isEqualTo("ml");
        assertThat(paste.amount()).isEqualByComparingTo("250.5");
    }

    @Test
    void aMixIsMadeOfSubstratesInStock() {
        var bark = materials.enter(teacher, Goods.bark(), null);
        var clay = materials.enter(teacher, Goods.unknown(), null);
        var mix = materials.enter(teacher, Goods.mix(Map.of(bark.id(), 1.0, clay.id(), 2.0)), null);
        assertThat(((StockDetail.Mix) mix.detail()).parts())
                .containsExactlyInAnyOrder(
                        new StockDetail.Part(bark.id(), bark.name(), 1),
                        new StockDetail.Part(clay.id(), clay.name(), 2));
        var tool = materials.enter(teacher, Goods.tool(), 1.0);
        for (var noSubstrate : List.of("" + tool.id(), "0", "-1", "bark", "9".repeat(18))) {
            var problem =
                    refusal(
                            () ->
                                    materials.enter(
                                            teacher,
                                            new NewStockMix(
                                                    Goods.name("Mix"), Map.of(noSubstrate, 1.0)),
                                            null));
            assertThat(problem.faults())
                    .containsExactly(
                            new Fault(
                                    "parts",
                                    "expected ids of substrates in stock, found “%s”"
                                            .formatted(noSubstrate)));
        }
        assertThat(refusal(() -> materials.move(teacher, mix.id(), came(1, TODAY))).faults())
                .extracting(Fault::field)
                .containsExactly("kind");
    }

    @Test
    void theStockIsTheSumOfItsMovements() {
        var item = materials.enter(teacher, Goods.supply(), null);
        materials.move(teacher, item.id(), came(10, TODAY.minusDays(9)));
        materials.move(teacher, item.id(), went(3.25, TODAY.minusDays(7)));
        var left = materials.move(teacher, item.id(), counted(6.5, TODAY.minusDays(2), "spilt"));
        assertThat(left.amount()).isEqualByComparingTo("6.5");
        assertThat(materials.move(teacher, item.id(), came(1, TODAY)).amount())
                .isEqualByComparingTo("7.5");
        assertThat(left.version())
                .as("movements do not change what it is")
                .isEqualTo(item.version());
        var moved = materials.movements(teacher, item.id(), FIRST_PAGE);
        assertThat(moved.total()).isEqualTo(4);
        assertThat(moved.items())
                .extracting(Movement::kind, one -> one.amount().toPlainString(), Movement::on)
                .containsExactly(
                        tuple(MovementKind.RECEIVED, "1", TODAY),
                        tuple(MovementKind.COUNTED, "-0.25", TODAY.minusDays(2)),
                        tuple(MovementKind.TAKEN, "-3.25", TODAY.minusDays(7)),
                        tuple(MovementKind.RECEIVED, "10", TODAY.minusDays(9)));
        assertThat(moved.items())
                .extracting(one -> one.left().toPlainString())
                .containsExactly("7.5", "6.5", "6.75", "10");
        assertThat(materials.movements(teacher, item.id(), new PageRequest(1, 3)).items())
                .extracting(Movement::kind)
                .containsExactly(MovementKind.RECEIVED);
        assertThat(moved.items().get(1).note()).isEqualTo("spilt");
        assertThat(moved.items()).allMatch(one -> one.byId() == teacher.personId());
    }

    @Test
    void whatIsNotThereCannotBeTaken() {
        var item = materials.enter(teacher, Goods.supply(), null);
        materials.move(teacher, item.id(), came(5, TODAY.minusDays(3)));
        assertThat(messages(() -> materials.move(teacher, item.id(), went(7, TODAY))))
                .containsExactly(
                        "amount: 7 ml cannot be taken: on 20 February 2026 there were 5. Maybe count"
                                + " it again first.");
        assertThat(messages(() -> materials.move(teacher, item.id(), went(1, TODAY.minusDays(4)))))
                .containsExactly(
                        "amount: 1 ml cannot be taken: on 16 February 2026 there were 0. Maybe count"
                                + " it again first.");
        assertThat(materials.get(teacher, item.id()).amount()).isEqualByComparingTo("5");
    }

    /** Taken on the Monday, it would be missing on the Tuesday. */
    @Test
    void whatIsTakenLateInTheBooksMustNotBeGoneBefore() {
        var item = materials.enter(teacher, Goods.supply(), null);
        materials.move(teacher, item.id(), came(5, TODAY.minusDays(9)));
        materials.move(teacher, item.id(), went(4, TODAY.minusDays(2)));
        assertThat(messages(() -> materials.move(teacher, item.id(), went(2, TODAY.minusDays(5)))))
                .containsExactly(
                        "amount: with that there would have been -1 ml on 18 February 2026, after"
                                + " what is on record since. Maybe count it again first.");
        assertThat(
                        messages(
                                () ->
                                        materials.move(
                                                teacher,
                                                item.id(),
                                                counted(3, TODAY.minusDays(5), null))))
                .hasSize(1);
        assertThat(
                        materials
                                .move(teacher, item.id(), counted(4.5, TODAY.minusDays(5), null))
                                .amount())
                .isEqualByComparingTo("0.5");
    }

    @Test
    void aCountClosesTheBooksBeforeIt() {
        var item = materials.enter(teacher, Goods.supply(), null);
        materials.move(teacher, item.id(), counted(8, TODAY.minusDays(3), null));
        assertThat(messages(() -> materials.move(teacher, item.id(), came(1, TODAY.minusDays(4)))))
                .containsExactly(
                        "on: it was counted on 17 February 2026, and what happened before is in that"
                                + " count; found 16 February 2026");
        assertThat(materials.move(teacher, item.id(), came(1, TODAY.minusDays(3))).amount())
                .as("on the day of the count, after it")
                .isEqualByComparingTo("9");
    }

    @Test
    void piecesAreWholeAndDaysHaveHappened() {
        var tool = materials.enter(teacher, Goods.tool(), 2.0);
        assertThat(messages(() -> materials.move(teacher, tool.id(), came(0.5, TODAY))))
                .containsExactly("amount: expected a whole number of pieces, found 0.5");
        assertThat(messages(() -> materials.move(teacher, tool.id(), came(0, TODAY))))
                .containsExactly("amount: expected more than 0, found 0");
        assertThat(messages(() -> materials.move(teacher, tool.id(), came(1, TODAY.plusDays(1)))))
                .containsExactly(
                        "on: expected a day from 1900-01-01 to 2026-02-20, found 2026-02-21");
        var paste = materials.enter(teacher, Goods.supply(), null);
        assertThat(messages(() -> materials.move(teacher, paste.id(), came(0.0004, TODAY))))
                .containsExactly("amount: expected three decimals at most, found 0.0004");
        assertThat(materials.move(teacher, tool.id(), counted(0, TODAY, null)).amount()).isZero();
    }

    /** Any order of coming, going and counting: never below nothing, always the sum. */
    @Test
    void noSequenceOfMovementsLeadsBelowNothing() {
        long seed = 50_050;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 12; round++) {
            var item = materials.enter(teacher, Goods.supply(), null);
            for (int i = 0; i < 15; i++) {
                var on = TODAY.minusDays(dice.nextInt(12));
                double amount = dice.nextInt(1, 40) / 4.0;
                var movement =
                        switch (dice.nextInt(5)) {
                            case 0 -> counted(amount, on, null);
                            case 1, 2 -> came(amount, on);
                            default -> went(amount, on);
                        };
                try {
                    materials.move(teacher, item.id(), movement);
                } catch (Refused refused) {
                    assertThat(refused.problem().status()).isEqualTo(400);
                }
            }
            var moved =
                    new ArrayList<>(materials.movements(teacher, item.id(), FIRST_PAGE).items());
            java.util.Collections.reverse(moved);
            var running = BigDecimal.ZERO;
            for (int i = 0; i < moved.size(); i++) {
                running = running.add(moved.get(i).amount());
                boolean dayEnds =
                        i + 1 == moved.size() || !moved.get(i + 1).on().equals(moved.get(i).on());
                if (dayEnds) {
                    assertThat(running)
                            .as("seed %d, round %d, %s", seed, round, moved)
                            .isGreaterThanOrEqualTo(BigDecimal.ZERO);
                }
            }
            assertThat(materials.get(teacher, item.id()).amount())
                    .as("seed %d, round %d", seed, round)
                    .isEqualByComparingTo(running);
        }
    }

    @Test
    void twoWhoTakeTheLastOneAtOnceDoNotBothGetIt() throws Exception {
        var saw = materials.enter(teacher, Goods.tool(), 1.0);
        var pool = Executors.newFixedThreadPool(2);
        try {
            Callable<Boolean> take =
                    () -> {
                        try {
                            materials.move(teacher, saw.id(), went(1, TODAY));
                            return true;
                        } catch (Refused refused) {
                            return false;
                        }
                    };
            var got = new ArrayList<Boolean>();
            for (var one : pool.invokeAll(List.of(take, take))) {
                got.add(one.get());
            }
            assertThat(got).containsExactlyInAnyOrder(true, false);
        } finally {
            pool.shutdown();
        }
        assertThat(materials.get(teacher, saw.id()).amount()).isZero();
    }

    @Test
    void aChangeIsMadeToTheVersionThatWasSeen() {
        var paste = materials.enter(teacher, Goods.supply(), 3.0);
        var other = school.person("Olga Office", Role.REGISTRAR);
        var renamed = new NewStockSupply(Goods.name("Paste"), "ml");
        var changed = materials.change(other, paste.id(), paste.version(), renamed);
        assertThat(changed.name()).isEqualTo(renamed.name());
        assertThat(changed.version()).isGreaterThan(paste.version());
        assertThat(changed.changedById()).isEqualTo(other.personId());
        assertThat(changed.amount()).isEqualByComparingTo("3");
        assertThat(
                        refusal(
                                        () ->
                                                materials.change(
                                                        teacher,
                                                        paste.id(),
                                                        paste.version(),
                                                        Goods.supply()))
                                .status())
                .isEqualTo(412);
        assertThat(
                        refusal(
                                        () ->
                                                materials.change(
                                                        teacher,
                                                        paste.id(),
                                                        changed.version(),
                                                        Goods.tool()))
                                .status())
                .as("a supply does not become a tool")
                .isEqualTo(404);
        assertThat(
                        messages(
                                () ->
                                        materials.change(
                                                teacher,
                                                paste.id(),
                                                changed.version(),
                                                new NewStockSupply(renamed.name(), "g"))))
                .containsExactly(
                        "unit: expected ml, which its amounts are written down in, found g. Maybe"
                                + " enter a new supply.");
    }

    @Test
    void thereIsOneOfEachNameInAKindHoweverItIsSpelt() {
        var saw = materials.enter(teacher, Goods.tool(), 1.0);
        var shouted = "  " + saw.name().toUpperCase(java.util.Locale.ROOT).replace(" ", "   ");
        assertThat(
                        refusal(() -> materials.enter(teacher, new NewStockTool(shouted), null))
                                .detail())
                .isEqualTo("There is a tool “%s” already.".formatted(saw.name()));
        assertThat(materials.findByName(teacher, StockKind.TOOL, shouted))
                .hasValueSatisfying(found -> assertThat(found.id()).isEqualTo(saw.id()));
        assertThat(materials.findByName(teacher, StockKind.SUPPLY, saw.name())).isEmpty();
        assertThat(materials.enter(teacher, new NewStockSupply(saw.name(), "m"), null).kind())
                .isEqualTo(StockKind.SUPPLY);
        assertThat(
                        materials
                                .change(teacher, saw.id(), saw.version(), new NewStockTool(shouted))
                                .name())
                .as("its own name is free for it")
                .isEqualTo(shouted.strip());
    }

    @Test
    void impossibleContainersAreRefusedAtTheirFields() {
        assertThat(messages(() -> materials.enter(teacher, Goods.oval(400, 300, 80, 90), null)))
                .containsExactly(
                        "lipMm: expected less than the depth of 80 mm, found 90. Maybe lip and depth"
                                + " were swapped.");
        assertThat(messages(() -> enter(Outline.ROUND, 300.0, 200.0, null, null)))
                .containsExactly(
                        "topWidthMm: expected nothing, since what is round has one diameter, found"
                                + " 200");
        assertThat(messages(() -> enter(Outline.OVAL, 300.0, null, null, null)))
                .containsExactly("topWidthMm: expected a width, found nothing");
        assertThat(messages(() -> enter(Outline.OVAL, 300.0, 200.0, 250.0, null)))
                .containsExactly("bottomWidthMm: expected a width, found nothing");
        assertThat(messages(() -> enter(Outline.OVAL, 300.0, 200.0, null, 150.0)))
                .containsExactly(
                        "bottomLengthMm: expected a length as well as a width, found nothing");
        var round = (StockDetail.Container) enter(Outline.ROUND, 300.0, null, 250.0, null).detail();
        assertThat(round.sizes().bottomWidthMm()).isEqualTo(250);
    }

    private StockItem enter(
            Outline outline, Double length, Double width, Double bottomLength, Double bottomWidth) {
        return materials.enter(
                teacher,
                new NewStockContainer(
                        Goods.name("Pot"),
                        ContainerUse.SHOW,
                        outline,
                        length,
                        width,
                        bottomLength,
                        bottomWidth,
                        80.0,
                        null,
                        null,
                        null),
                null);
    }

    @Test
    void impossibleSubstratesAreRefusedAtTheirFields() {
        assertThat(
                        messages(
                                () ->
                                        materials.enter(
                                                teacher,
                                                new NewStockSubstrate(
                                                        Goods.name("Mud"),
                                                        0.7,
                                                        0.5,
                                                        60.0,
                                                        null,
                                                        50.0,
                                                        60.0,
                                                        null),
                                                null)))
                .containsExactly(
                        "dryKgPerLitreTo: expected at least 0.7, found 0.5. Maybe swap them.",
                        "airPercent: expected water and air to be 100 % together at most, found 60.0"
                                + " and 50.0");
        assertThat(
                        messages(
                                () ->
                                        materials.enter(
                                                teacher,
                                                new NewStockSubstrate(
                                                        Goods.name("Mud"),
                                                        null,
                                                        0.5,
                                                        null,
                                                        null,
                                                        null,
                                                        null,
                                                        null),
                                                null)))
                .containsExactly("dryKgPerLitre: expected the lower end as well, found nothing");
    }

    @Test
    void theStockOfADayIsToldInTheTermsOfItsArithmetic() {
        var oval = materials.enter(teacher, Goods.oval(400, 300, 80, 15), null);
        materials.move(teacher, oval.id(), came(3, TODAY.minusDays(10)));
        materials.move(teacher, oval.id(), went(1, TODAY.minusDays(1)));
        var bark = materials.enter(teacher, Goods.bark(), 40.0);
        var mix = materials.enter(teacher, Goods.mix(Map.of(bark.id(), 1.0)), null);
        var wire = materials.enter(teacher, Goods.wire(), 250.0);
        var saw = materials.enter(teacher, Goods.tool(), 2.0);
        var now = materials.stockOn(teacher, TODAY);
        assertThat(now.containers())
                .filteredOn(one -> one.container().id() == oval.id())
                .singleElement()
                .satisfies(
                        one -> {
                            assertThat(one.use()).isEqualTo(ContainerUse.TRAINING);
                            assertThat(one.container().count()).isEqualTo(2);
                            assertThat(one.container().container().rootDepthMm()).isEqualTo(65);
                        });
        assertThat(now.mixes().get(mix.name()).parts().get(0).substrate().name())
                .isEqualTo(bark.name());
        assertThat(now.tools()).containsEntry(saw.name(), 2);
        assertThat(now.held())
                .contains(
                        new Held(bark.name(), new BigDecimal("40"), "l"),
                        new Held(wire.name(), new BigDecimal("250"), "g"))
                .noneMatch(held -> held.item().equals(mix.name()));
        var gauge = ((StockDetail.Wire) wire.detail()).gaugeMm();
        assertThat(now.wires())
                .contains(new StockSnapshot.WireHeld(WireMetal.ALUMINIUM, gauge, 250));
        assertThat(materials.stockOn(teacher, TODAY.minusDays(5)).containers())
                .filteredOn(one -> one.container().id() == oval.id())
                .extracting(one -> one.container().count())
                .containsExactly(3);
        assertThat(materials.stockOn(teacher, TODAY.plusYears(1)).tools())
                .containsEntry(saw.name(), 2);
    }

    @Test
    void itemsAreListedByKindAndName() {
        var name = Goods.name("zz");
        materials.enter(teacher, new NewStockTool(name + " B"), null);
        materials.enter(teacher, new NewStockTool(name + " a"), 4.0);
        var tools = materials.list(teacher, StockKind.TOOL, new PageRequest(0, 200));
        assertThat(tools.items()).allMatch(one -> one.kind() == StockKind.TOOL);
        assertThat(tools.total()).isEqualTo(materials.counts(teacher).get(StockKind.TOOL));
        assertThat(tools.items())
                .filteredOn(one -> one.name().startsWith(name))
                .extracting(StockItem::name, one -> one.amount().intValue())
                .containsExactly(tuple(name + " a", 4), tuple(name + " B", 0));
        var all = materials.list(teacher, null, new PageRequest(0, 1));
        assertThat(all.items()).hasSize(1);
        assertThat(all.total()).isGreaterThanOrEqualTo(tools.total());
        var nobody = refusal(() -> materials.get(teacher, Long.MAX_VALUE));
        assertThat(nobody.status()).isEqualTo(404);
    }

    @Test
    void studentsHaveNothingToDoWithTheStock() {
        var pupil = school.person("Stan Student", Role.STUDENT);
        var saw = materials.enter(teacher, Goods.tool(), 1.0);
        for (ThrowingCallable attempt :
                List.<ThrowingCallable>of(
                        () -> materials.list(pupil, null, FIRST_PAGE),
                        () -> materials.counts(pupil),
                        () -> materials.get(pupil, saw.id()),
                        () -> materials.findByName(pupil, StockKind.TOOL, saw.name()),
                        () -> materials.enter(pupil, Goods.tool(), null),
                        () -> materials.change(pupil, saw.id(), saw.version(), Goods.tool()),
                        () -> materials.move(pupil, saw.id(), went(1, TODAY)),
                        () -> materials.movements(pupil, saw.id(), FIRST_PAGE),
                        () -> materials.stockOn(pupil, TODAY))) {
            assertThat(refusal(attempt).status()).isEqualTo(403);
        }
        assertThat(materials.get(teacher, saw.id())).isEqualTo(saw);
    }

    private static org.assertj.core.groups.Tuple tuple(Object... values) {
        return org.assertj.core.groups.Tuple.tuple(values);
    }

    private static List<String> messages(ThrowingCallable attempt) {
        return refusal(attempt).faults().stream()
                .map(fault -> fault.field() + ": " + fault.message())
                .toList();
    }

    private static Problem refusal(ThrowingCallable attempt) {
        var refused = catchThrowableOfType(Refused.class, attempt);
        assertThat(refused).as("refused").isNotNull();
        return refused.problem();
    }
}
