package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Sums worked by hand. */
@Tag("fast")
class ShoppingTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 7);
    private static final List<String> ITEMS = List.of("akadama", "mesh", "paste");

    @Test
    void earlierNeedsEatTheStockFirst() {
        var list =
                list(
                        List.of(
                                need("pumice", "10", 14, "spring class"),
                                need("pumice", "8", 0, "repotting"),
                                need("pumice", "5", 7, "workshop")),
                        List.of(held("pumice", "12")));
        assertThat(list)
                .containsExactly(
                        new Shortfall(
                                "pumice",
                                new BigDecimal("1"),
                                "l",
                                FIRST.plusDays(7),
                                List.of("workshop")),
                        new Shortfall(
                                "pumice",
                                new BigDecimal("10"),
                                "l",
                                FIRST.plusDays(14),
                                List.of("spring class")));
    }

    @Test
    void whatIsExactlyThereIsNotBought() {
        var list =
                list(
                        List.of(
                                need("wire", "0.1", 0, "a"),
                                need("wire", "0.1", 0, "b"),
                                need("wire", "0.1", 1, "c")),
                        List.of(held("wire", "0.3")));
        assertThat(list).as("0.1 three times is 0.3 in decimals").isEmpty();
    }

    @Test
    void needsOfOneDayAreOneLineInTheOrderOfDaysAndItems() {
        var list =
                list(
                        List.of(
                                need("akadama", "1", 3, "late"),
                                need("paste", "1", 3, "late"),
                                need("mesh", "2", 0, "maple"),
                                need("mesh", "3", 0, "elm"),
                                need("mesh", "3", 0, "elm"),
                                need("akadama", "4", 0, "elm")),
                        List.of());
        assertThat(list)
                .extracting(Shortfall::item)
                .containsExactly("akadama", "mesh", "akadama", "paste");
        assertThat(list.get(1).amount()).isEqualByComparingTo("8");
        assertThat(list.get(1).forWhat()).containsExactly("elm", "maple");
    }

    @Test
    void bagsAreNotSetAgainstLitres() {
        var need = new Need("pumice", BigDecimal.TEN, "l", FIRST, "class");
        var stock = new Held("pumice", BigDecimal.TEN, "bags");
        var found = (Reckoned.Found<List<Shortfall>>) Shopping.list(List.of(need), List.of(stock));
        assertThat(found.value()).hasSize(1);
        assertThat(found.remarks())
                .containsExactly(
                        "pumice is wanted in l and counted in bags; they are not set against each"
                                + " other.");
    }

    @Test
    void aStockBelowNothingIsRefused() {
        var refused =
                (Reckoned.Refused<List<Shortfall>>)
                        Shopping.list(
                                List.of(need("mesh", "1", 0, "a")),
                                List.of(held("mesh", "-0.5"), held("paste", "-2")));
        assertThat(refused.refusals())
                .containsExactly(
                        new Refusal(
                                "mesh",
                                "expected a stock of 0 or more, found -0.5 l. Maybe count it again."),
                        new Refusal(
                                "paste",
                                "expected a stock of 0 or more, found -2 l. Maybe count it again."));
    }

    @Test
    void aNeedOfNothingIsABug() {
        assertThatIllegalArgumentException().isThrownBy(() -> need("mesh", "0", 0, "a"));
        assertThatIllegalArgumentException().isThrownBy(() -> need(" ", "1", 0, "a"));
        assertThatIllegalArgumentException().isThrownBy(() -> held("", "1"));
    }

    @Test
    void allShortfallsOfAnItemAreNeedLessStock() {
        laws(
                (where, needs, stock, dice) -> {
                    var all = totals(list(needs, stock));
                    for (var item : ITEMS) {
                        var lacking =
                                needed(needs, item)
                                        .subtract(stocked(stock, item))
                                        .max(BigDecimal.ZERO);
                        assertThat(all.getOrDefault(item, BigDecimal.ZERO))
                                .as(where)
                                .isEqualByComparingTo(lacking);
                    }
                });
    }

    @Test
    void theOrderInWhichNeedsAreToldDoesNotMatter() {
        laws(
                (where, needs, stock, dice) -> {
                    var expected = list(needs, stock);
                    Collections.shuffle(needs, new Random(dice.nextLong()));
                    Collections.shuffle(stock, new Random(dice.nextLong()));
                    assertThat(list(needs, stock)).as(where).isEqualTo(expected);
                });
    }

    /** Up to any day: more needed is never less short, more held never more. */
    @Test
    void moreNeedIsNeverLessShortAndMoreStockNeverMore() {
        laws(
                (where, needs, stock, dice) -> {
                    var before = list(needs, stock);
                    var more = new ArrayList<>(needs);
                    more.add(any(dice));
                    var richer = new ArrayList<>(stock);
                    richer.add(held(ITEMS.get(dice.nextInt(3)), "" + dice.nextInt(1, 9)));
                    for (int day = 0; day < 10; day++) {
                        for (var item : ITEMS) {
                            var then = upTo(before, item, day);
                            assertThat(upTo(list(more, stock), item, day))
                                    .as(where)
                                    .isGreaterThanOrEqualTo(then);
                            assertThat(upTo(list(needs, richer), item, day))
                                    .as(where)
                                    .isLessThanOrEqualTo(then);
                        }
                    }
                });
    }

    private interface Law {
        void check(String where, List<Need> needs, List<Held> stock, SplittableRandom dice);
    }

    private static void laws(Law law) {
        long seed = 31_400;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            var needs = new ArrayList<Need>();
            for (int n = 0; n < dice.nextInt(12); n++) {
                needs.add(any(dice));
            }
            var stock = new ArrayList<Held>();
            for (int s = 0; s < dice.nextInt(4); s++) {
                stock.add(held(ITEMS.get(dice.nextInt(3)), dice.nextInt(300) + ".7"));
            }
            law.check("seed %d, case %d".formatted(seed, i), needs, stock, dice);
        }
    }

    private static Need any(SplittableRandom dice) {
        return need(
                ITEMS.get(dice.nextInt(3)),
                dice.nextInt(1, 120) + "." + dice.nextInt(10),
                dice.nextInt(8),
                "class " + dice.nextInt(3));
    }

    private static BigDecimal upTo(List<Shortfall> list, String item, int day) {
        return list.stream()
                .filter(one -> one.item().equals(item) && !one.by().isAfter(FIRST.plusDays(day)))
                .map(Shortfall::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Map<String, BigDecimal> totals(List<Shortfall> list) {
        var totals = new HashMap<String, BigDecimal>();
        list.forEach(one -> totals.merge(one.item(), one.amount(), BigDecimal::add));
        return totals;
    }

    private static BigDecimal needed(List<Need> needs, String item) {
        return needs.stream()
                .filter(need -> need.item().equals(item))
                .map(Need::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal stocked(List<Held> stock, String item) {
        return stock.stream()
                .filter(held -> held.item().equals(item))
                .map(Held::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<Shortfall> list(Collection<Need> needs, Collection<Held> stock) {
        return Shopping.list(needs, stock).find().orElseThrow();
    }

    private static Need need(String item, String amount, int day, String forWhat) {
        return new Need(item, new BigDecimal(amount), "l", FIRST.plusDays(day), forWhat);
    }

    private static Held held(String item, String amount) {
        return new Held(item, new BigDecimal(amount), "l");
    }
}
