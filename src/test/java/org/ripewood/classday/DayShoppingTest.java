package org.ripewood.classday;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.ripewood.SchoolProfile;
import org.ripewood.boards.DayWork;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Substrate;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Technique;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.records.ContainerStay;

/** Amounts are worked by hand from what the techniques say one tree takes. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class DayShoppingTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    @Inject CourseContent content;

    private SessionPlan.Row row(long treeId, String technique) {
        return row(treeId, content.inForce().technique(technique));
    }

    private static SessionPlan.Row row(long treeId, Technique technique) {
        return new SessionPlan.Row(
                "1",
                "somebody",
                treeId,
                "tree " + treeId,
                "elm",
                "Stage 3: Build the structure",
                technique,
                null,
                DayWork.Ground.READY,
                "",
                List.of(),
                List.of());
    }

    private static ContainerStay stay(long treeId, @Nullable Double litres) {
        return new ContainerStay(treeId, treeId, "training", null, litres, DAY);
    }

    private static StockSnapshot stock(List<StockSnapshot.WireHeld> wires, Held... held) {
        var substrates =
                List.of(
                        new Substrate("pumice", null, null, null, null),
                        new Substrate("pine bark", null, null, null, null));
        return new StockSnapshot(
                DAY, List.of(), substrates, Map.of(), wires, Map.of(), List.of(held));
    }

    private static Held held(String item, double amount, String unit) {
        return new Held(item, BigDecimal.valueOf(amount), unit);
    }

    private static SessionPlan.Want want(List<SessionPlan.Want> wants, String item) {
        return wants.stream().filter(one -> one.item().equals(item)).findFirst().orElseThrow();
    }

    /** 1.15 l for each litre of 4 and of 6 litres are 11.5 l; 9 are there, of two kinds. */
    @Test
    void substrateGoesByTheContainersAndAllKindsCount() {
        var stock = stock(List.of(), held("pumice", 4, "l"), held("pine bark", 5, "l"));
        var wants =
                new DayShopping(
                                DAY,
                                new DayTakes(
                                        stock, Map.of(1L, stay(1, 4.0), 2L, stay(2, 6.0)), true))
                        .wants(List.of(row(1, "root_pruning_repot"), row(2, "root_pruning_repot")));
        var substrate = want(wants, "substrate");
        assertThat(substrate.amount()).isEqualByComparingTo("11.5");
        assertThat(substrate.inStock()).isEqualByComparingTo("9");
        assertThat(substrate.missing()).isEqualByComparingTo("2.5");
        assertThat(substrate.trees()).containsExactly("tree 1", "tree 2");
    }

    @Test
    void aContainerNobodyMeasuredIsToldAndNotGuessed() {
        var wants =
                new DayShopping(
                                DAY,
                                new DayTakes(stock(List.of()), Map.of(1L, stay(1, null)), true))
                        .wants(List.of(row(1, "root_pruning_repot")));
        var substrate = want(wants, "substrate");
        assertThat(substrate.amount()).isEqualByComparingTo("0");
        assertThat(substrate.unknown()).containsExactly("tree 1");
    }

    /** Two trees at 80 g against 100 g of two gauges. */
    @Test
    void wireOfAMetalCountsTogether() {
        var wires =
                List.of(
                        new StockSnapshot.WireHeld(WireMetal.ALUMINIUM, 2, 60),
                        new StockSnapshot.WireHeld(WireMetal.ALUMINIUM, 3, 40),
                        new StockSnapshot.WireHeld(WireMetal.COPPER, 1, 900));
        var wants =
                new DayShopping(DAY, new DayTakes(stock(wires), Map.of(), true))
                        .wants(List.of(row(1, "wiring_primary"), row(2, "wiring_primary")));
        var wire = want(wants, "aluminium wire");
        assertThat(wire.amount()).isEqualByComparingTo("160");
        assertThat(wire.inStock()).isEqualByComparingTo("100");
        assertThat(wire.missing()).isEqualByComparingTo("60");
    }

    /** As people write them, without needless noughts or powers of ten. */
    @Test
    void amountsArePlain() {
        var wires = List.of(new StockSnapshot.WireHeld(WireMetal.ALUMINIUM, 2, 100));
        var takes = new DayTakes(stock(wires), Map.of(), true);
        var wire =
                want(
                        new DayShopping(DAY, takes)
                                .wants(List.of(row(1, "wiring_primary"), row(2, "wiring_primary"))),
                        "aluminium wire");
        assertThat(List.of(wire.amount(), wire.inStock(), wire.missing()))
                .hasToString("[160, 100, 60]");
    }

    @Test
    void whatTheSchoolDoesNotCountIsMissingAltogether() {
        var wants =
                new DayShopping(
                                DAY,
                                new DayTakes(
                                        stock(List.of(), held("Wound paste", 250, "tubes")),
                                        Map.of(),
                                        true))
                        .wants(List.of(row(1, "branch_removal")));
        var paste = want(wants, "wound paste");
        assertThat(paste.inStock()).isNull();
        assertThat(paste.missing()).isEqualByComparingTo("5");
    }

    /** Nobody can say how many metres a piece is. */
    @Test
    void anItemInTwoUnitsIsTwo() {
        var mesh = content.inForce().technique("root_pruning_repot");
        var pieces =
                new Technique(
                        mesh.rule(),
                        mesh.title(),
                        mesh.stage(),
                        mesh.summary(),
                        mesh.teaching(),
                        mesh.lessons(),
                        mesh.startsClock(),
                        mesh.studentMinutes(),
                        mesh.instructorMinutes(),
                        mesh.irreversible(),
                        mesh.asks(),
                        mesh.goesAfter(),
                        mesh.effects(),
                        mesh.unsettles(),
                        mesh.tools(),
                        mesh.materials(),
                        List.of(
                                new Technique.Take("mesh", 2, "pieces", false),
                                new Technique.Take("mesh", 0.5, "m", false)),
                        mesh.hazards(),
                        mesh.aftercare(),
                        mesh.evidence(),
                        mesh.source());
        var takes = new DayTakes(stock(List.of(), held("mesh", 3, "m")), Map.of(), true);
        var wants = new DayShopping(DAY, takes).wants(List.of(row(1, pieces)));
        assertThat(wants).extracting(SessionPlan.Want::unit).containsExactly("pieces", "m");
        assertThat(wants.get(0).missing()).isEqualByComparingTo("2");
        assertThat(wants.get(0).inStock()).isNull();
        assertThat(wants.get(1).missing()).isEqualByComparingTo("0");
        assertThat(wants.get(1).inStock()).isEqualByComparingTo("3");
    }

    @Test
    void treesWithoutWorkTakeNothing() {
        var idle =
                new SessionPlan.Row(
                        "1",
                        "somebody",
                        1,
                        "tree 1",
                        "elm",
                        "Stage 3: Build the structure",
                        null,
                        null,
                        null,
                        "",
                        List.of(),
                        List.of());
        assertThat(
                        new DayShopping(DAY, new DayTakes(stock(List.of()), Map.of(), true))
                                .wants(List.of(idle)))
                .isEmpty();
    }
}
