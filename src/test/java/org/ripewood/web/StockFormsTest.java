package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.School.TODAY;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.supply.ContainerSizes;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.materials.ContainerUse;
import org.ripewood.materials.Goods;
import org.ripewood.materials.Materials;
import org.ripewood.materials.NewStockContainer;
import org.ripewood.materials.NewStockMix;
import org.ripewood.materials.NewStockSubstrate;
import org.ripewood.materials.NewStockTool;
import org.ripewood.materials.NewStockWire;
import org.ripewood.materials.StockDetail;
import org.ripewood.materials.StockItem;
import org.ripewood.materials.StockKind;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.web.stock.Calculation;
import org.ripewood.web.stock.StockCategory;

/** The stock's pages: forms keep what was typed, and the calculators answer plainly. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class StockFormsTest {

    private static final Pattern ID = Pattern.compile("\\sid=\"([^\"]+)\"");
    private static final Pattern LABEL = Pattern.compile("<label for=\"([^\"]+)\"");

    @Inject School school;
    @Inject People people;
    @Inject Materials materials;

    private Actor actor;
    private Visitor teacher;

    @BeforeEach
    void openTheSchool() {
        actor = school.person("Tess Teacher", Role.INSTRUCTOR);
        teacher = Visitor.of(people, actor);
    }

    @Test
    void aThingIsEnteredCountedAndMoved() {
        var name = Goods.name("Drainage mesh");
        var entered =
                teacher.send(
                        "/stock?shelf=supplies",
                        "/stock/supplies",
                        Map.of("name", name, "unit", "m", "amount", "12.5"));
        var item = materials.findByName(actor, StockKind.SUPPLY, name).orElseThrow();
        leadsTo(entered, "/stock/" + item.id());
        assertThat(item.amount()).isEqualByComparingTo("12.5");
        var page = "/stock/" + item.id();
        leadsTo(
                teacher.send(
                        page,
                        page + "/movements",
                        Map.of(
                                "kind", "taken",
                                "amount", "2.25",
                                "on", TODAY.toString(),
                                "note", "spring class")),
                page + "#movements");
        var html = teacher.get(page).asString();
        assertThat(html)
                .contains("10.25 m")
                .contains("−2.25")
                .contains("spring class")
                .contains("Tess Teacher");
        assertThat(teacher.get("/stock?shelf=supplies").asString()).contains(name);
    }

    @Test
    void whatIsNotThereCannotBeTakenAndTheFormComesBack() {
        var saw = materials.enter(actor, Goods.tool(), 1.0);
        var page = "/stock/" + saw.id();
        var answer =
                teacher.send(
                        page,
                        page + "/movements",
                        Map.of(
                                "kind", "taken",
                                "amount", "3",
                                "on", TODAY.toString(),
                                "note", "lent & lost"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .containsPattern("<a class=\"tofield\" href=\"#move-amount\">[A-Z][^<]+</a>")
                .contains("3 pieces cannot be taken")
                .contains("value=\"3\"")
                .contains("value=\"lent &amp; lost\"")
                .contains("<option value=\"taken\" selected>");
        assertThat(materials.get(actor, saw.id()).amount()).isEqualByComparingTo("1");
    }

    @Test
    void aRefusedContainerKeepsEveryFieldThatWasTyped() {
        var answer =
                teacher.send(
                        "/stock",
                        "/stock/containers",
                        Map.of(
                                "name", "Kiln \"seconds\"",
                                "use", "show",
                                "outline", "round",
                                "topLengthMm", "300",
                                "topWidthMm", "200",
                                "depthMm", "deep",
                                "lipMm", "12",
                                "amount", "2"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains("value=\"Kiln &quot;seconds&quot;\"")
                .contains("<option value=\"show\" selected>")
                .contains("<option value=\"round\" selected>")
                .contains("value=\"deep\"")
                .contains("id=\"stock-depthMm-fault\"")
                .contains("value=\"12\"");
    }

    @Test
    void aChangeBeginsWithWhatItIs() {
        var pot =
                materials.enter(
                        actor,
                        new NewStockContainer(
                                Goods.name("Tapered"),
                                ContainerUse.SHOW,
                                Outline.RECTANGULAR,
                                400.0,
                                300.0,
                                360.0,
                                260.0,
                                80.0,
                                12.5,
                                "stoneware",
                                3.2),
                        1.0);
        var page = "/stock/" + pot.id();
        var html = teacher.get(page).asString();
        assertThat(html).contains("8.52 l").contains("In stock: <strong class=\"nums\">1 piece");
        for (var field :
                List.of(
                        field("topLengthMm", "400"),
                        field("bottomWidthMm", "260"),
                        field("lipMm", "12.5"),
                        field("massKg", "3.2"),
                        field("material", "stoneware"))) {
            assertThat(html).contains(field);
        }
        var fields =
                Map.of(
                        "version", pot.version(),
                        "name", pot.name(),
                        "use", "training",
                        "outline", "oval",
                        "topLengthMm", "400",
                        "topWidthMm", "300",
                        "depthMm", "90");
        leadsTo(teacher.send(page, page, fields), page);
        var changed = (StockDetail.Container) materials.get(actor, pot.id()).detail();
        assertThat(changed.sizes())
                .isEqualTo(ContainerSizes.straight(Outline.OVAL, 400, 300, 90, 0));
        var stale = teacher.send(page, page, fields);
        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(stale.asString()).contains("Someone changed this").contains("value=\"90\"");
    }

    @Test
    void aMixIsMadeOfTheSubstratesOnTheForm() {
        var bark = materials.enter(actor, Goods.bark(), 20.0);
        assertThat(teacher.get("/stock?shelf=mixes").asString())
                .contains("name=\"parts." + bark.id() + "\"")
                .contains(bark.name());
        var name = Goods.name("House mix");
        var entered =
                teacher.send(
                        "/stock?shelf=mixes",
                        "/stock/mixes",
                        Map.of("name", name, "parts." + bark.id(), "3"));
        var mix = materials.findByName(actor, StockKind.MIX, name).orElseThrow();
        leadsTo(entered, "/stock/" + mix.id());
        assertThat(teacher.get("/stock/" + mix.id()).asString())
                .contains("3 parts " + bark.name())
                .contains(field("parts." + bark.id(), "3"))
                .doesNotContain("Count, put, take");
        var empty = teacher.send("/stock?shelf=mixes", "/stock/mixes", Map.of("name", "x"));
        assertThat(empty.statusCode()).isEqualTo(400);
        assertThat(empty.asString()).contains("id=\"stock-parts-fault\"");
    }

    @Test
    void aNameThatIsTakenIsAConflict() {
        var saw = materials.enter(actor, Goods.tool(), 1.0);
        var again = teacher.send("/stock?shelf=tools", "/stock/tools", Map.of("name", saw.name()));
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.asString()).contains("already").contains("value=\"" + saw.name() + "\"");
    }

    @Test
    void everyPageOfTheStockIsWellMade() {
        var pages = new ArrayList<String>();
        for (var shelf : StockCategory.values()) {
            pages.add("/stock?shelf=" + shelf.word());
        }
        for (var what : Calculation.values()) {
            pages.add("/stock/reckon?what=" + what.word());
        }
        pages.addAll(asked());
        for (var item : one()) {
            pages.add("/stock/" + item.id());
        }
        for (var path : pages) {
            var answer = teacher.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(200);
            var html = answer.asString();
            assertThat(html)
                    .as(path)
                    .containsOnlyOnce("<h1")
                    .doesNotContain("NOT_FOUND")
                    .doesNotContain("{")
                    .containsPattern("<title>[^<]+ · Ripewood</title>");
            var ids = ID.matcher(html).results().map(found -> found.group(1)).toList();
            assertThat(ids).as(path).doesNotHaveDuplicates();
            assertThat(ids)
                    .as(path)
                    .containsAll(
                            LABEL.matcher(html).results().map(found -> found.group(1)).toList());
        }
        assertThat(teacher.get("/stock?shelf=attic").statusCode()).isEqualTo(404);
        assertThat(teacher.get("/stock/reckon?what=tides").statusCode()).isEqualTo(404);
        assertThat(teacher.get("/stock/999999999999").statusCode()).isEqualTo(404);
    }

    @Test
    void teachersFindTheStockInTheMenuAndStudentsDoNot() {
        assertThat(teacher.get("/home").asString()).contains("<a href=\"/stock\">Stock</a>");
        var pupil = Visitor.of(people, school.person("Stan Student", Role.STUDENT));
        assertThat(pupil.get("/home").asString()).doesNotContain("/stock");
    }

    private List<StockItem> one() {
        var bark = materials.enter(actor, Goods.bark(), 5.0);
        return List.of(
                bark,
                materials.enter(actor, Goods.unknown(), null),
                materials.enter(actor, Goods.oval(300, 200, 60, 10), 1.0),
                materials.enter(actor, Goods.mix(Map.of(bark.id(), 1.0)), null),
                materials.enter(actor, Goods.wire(), 100.0),
                materials.enter(actor, Goods.tool(), 1.0),
                materials.enter(actor, Goods.supply(), 3.5));
    }

    private List<String> asked() {
        var stock = stockToReckonWith();
        return List.of(
                ask("container", "outline=oval&topLengthMm=400&topWidthMm=300&depthMm=80"),
                ask("mix", "mix=" + stock.mix().name() + "&litres=12"),
                ask("next", "outline=round&lengthMm=150&depthMm=40&trunkBaseMm=55&heightMm=400"),
                ask("wire", "metal=copper&branchMm=250&acrossMm=9"),
                ask("feed", "percentN=10&mgNPerLitre=200&waterLitres=5&containerLitres=5&months=6"),
                ask("lift", "kg=18.16&horizontalCm=40&verticalCm=75&travelCm=25&coupling=poor"));
    }

    private record Stock(StockItem mix, StockItem bark, StockItem clay, StockItem pot) {}

    private Stock stockToReckonWith() {
        var bark =
                materials.enter(
                        actor,
                        new NewStockSubstrate(
                                Goods.name("Loam"), 0.55, null, 38.0, null, 25.0, null, 14.0),
                        40.0);
        var clay = materials.enter(actor, Goods.unknown(), 0.0);
        var mix =
                materials.enter(
                        actor,
                        new NewStockMix(Goods.name("Even mix"), Map.of("" + bark.id(), 1.0)),
                        null);
        if (materials.findByName(actor, StockKind.WIRE, "copper wire 2.5 mm").isEmpty()) {
            materials.enter(actor, new NewStockWire(WireMetal.COPPER, 2.5), 10.0);
        }
        return new Stock(
                mix, bark, clay, materials.enter(actor, Goods.oval(300, 200, 60, 10), 1.0));
    }

    /** 40 × 30 over 36 × 26 cm, 8 cm deep, is 8.52 l; worked by hand from the prismatoid. */
    @Test
    void theContainerIsAnswered() {
        var html =
                teacher.get(
                                ask(
                                        "container",
                                        "outline=rectangular&topLengthMm=400&topWidthMm=300"
                                                + "&bottomLengthMm=360&bottomWidthMm=260&depthMm=80"))
                        .asString();
        assertThat(html)
                .contains("It holds 8.52 l of substrate.")
                .contains("1200 cm²")
                .contains("between the classes #2 and #3")
                .contains(field("topLengthMm", "400"));
    }

    @Test
    void aSizeReadInCentimetresIsGuessed() {
        var answer = teacher.get(ask("container", "outline=round&topLengthMm=40&depthMm=8"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains("expected 10 to 3000 mm, found 8. Maybe it was read in centimetres.");
    }

    /** 12 l of 0.55 kg/l and 38 % water: 6.6 dry were it not for 10 % more that it sinks by. */
    @Test
    void theMixIsAnsweredWithBagsAndWeight() {
        var stock = stockToReckonWith();
        var html =
                teacher.get(
                                ask(
                                        "mix",
                                        "mix="
                                                + stock.mix().name()
                                                + "&litres=12&settlingPercent=0"))
                        .asString();
        assertThat(html)
                .contains("Mix 12 l for 12 l to fill.")
                .contains("6.6 kg")
                .contains("11.2 kg")
                .contains("<td data-name=\"Bags to open\">1</td>")
                .contains("<td data-name=\"In stock\">40 l</td>");
        var unknown =
                teacher.get(ask("mix", "mix=" + stock.clay().name() + "&litres=12")).asString();
        assertThat(unknown)
                .contains("not known; missing: the dry weight of a litre of " + stock.clay().name())
                .contains("not in bags");
        var mistyped = teacher.get(ask("mix", "mix=no such mix&litres=12"));
        assertThat(mistyped.statusCode()).isEqualTo(400);
        assertThat(mistyped.asString()).contains("id=\"reckon-mix-fault\"");
    }

    @Test
    void theNextContainerIsAnsweredFromTheStock() {
        var stock = stockToReckonWith();
        var fits =
                teacher.get(ask("next", "outline=round&lengthMm=150&depthMm=40&wantedDepthMm=60"))
                        .asString();
        assertThat(fits).contains("Nearest to what is wanted").contains(stock.pot().name());
        var tooLarge =
                teacher.get(ask("next", "outline=oval&lengthMm=2900&widthMm=900&depthMm=40"))
                        .asString();
        assertThat(tooLarge)
                .contains("No container in stock takes this root ball as it is.")
                .contains("would have to come off");
        var noWidth = teacher.get(ask("next", "outline=oval&lengthMm=150&depthMm=40"));
        assertThat(noWidth.statusCode()).isEqualTo(400);
        assertThat(noWidth.asString()).contains("id=\"reckon-widthMm-fault\"");
    }

    /** Copper of 2.5 mm weighs 43.98 g/m, so 10 g are 0.23 m and 0.35 m are needed. */
    @Test
    void theWireIsAnsweredFromTheStock() {
        stockToReckonWith();
        var html = teacher.get(ask("wire", "metal=copper&branchMm=250&acrossMm=9")).asString();
        assertThat(html)
                .contains("One length of copper wire, 2.5 mm thick.")
                .contains("0.35 m")
                .contains("15.55 g")
                .contains("Only 0.23 m of it are in stock.");
        var none = teacher.get(ask("wire", "metal=copper&branchMm=250&acrossMm=90"));
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(none.asString()).contains("Maybe use a guy wire").contains("value=\"90\"");
    }

    /** Published: 200 mg/l of a 10 % product take 2 g a litre. */
    @Test
    void theFeedIsAnsweredWithItsLabel() {
        var html = teacher.get(ask("feed", "percentN=10&mgNPerLitre=200&waterLitres=5")).asString();
        assertThat(html).contains("10 g in 5 l of water.").contains("label decides");
        assertThat(teacher.get(ask("feed", "percentN=19&containerLitres=5&months=6")).asString())
                .contains("31.23 g of slow feed for a container of 5 l.");
    }

    /** Worked by hand: 18.16 kg where 12.94 are recommended for one. */
    @Test
    void theLiftIsAnsweredInWords() {
        var held = "&horizontalCm=40&verticalCm=75&travelCm=25&coupling=poor";
        assertThat(teacher.get(ask("lift", "kg=18.16" + held)).asString())
                .contains("Two people or a trolley.")
                .contains("up to 12.9 kg")
                .contains("1.4 times")
                .contains("the rules of your country");
        var stock = stockToReckonWith();
        var pot = "mix=" + stock.mix().name() + "&litres=12&containerKg=4&treeKg=3";
        assertThat(teacher.get(ask("lift", pot + held)).asString())
                .as("12 / 0.9 · 0.55 + 12 · 0.38 + 4 + 3")
                .contains("18.9 kg");
        assertThat(
                        teacher.get(ask("lift", "mix=" + stock.mix().name() + "&litres=12" + held))
                                .asString())
                .contains("its weight is not known")
                .contains("missing: the weight of the container, the weight of the tree");
    }

    @ParameterizedTest
    @CsvSource({
        "container, outline=oval&topLengthMm=400&depthMm=80, topWidthMm",
        "container, outline=round&topLengthMm=400&depthMm=80&lipMm=80, lipMm",
        "container, outline=cube&topLengthMm=400&depthMm=80, outline",
        "container, outline=round&topLengthMm=NaN&depthMm=80, topLengthMm",
        "container, outline=round&topLengthMm=400&depthMm=1e9, depthMm",
        "mix, litres=12, mix",
        "mix, mix=x&litres=-1, litres",
        "next, outline=round&depthMm=40, lengthMm",
        "wire, metal=gold&branchMm=250&acrossMm=9, metal",
        "wire, metal=copper&branchMm=250&acrossMm=0, acrossMm",
        "feed, percentN=10, mgNPerLitre",
        "feed, percentN=10&mgNPerLitre=200, waterLitres",
        "feed, percentN=0&mgNPerLitre=200&waterLitres=5, percentN",
        "feed, percentN=60&percentP2o5=60&mgNPerLitre=200&waterLitres=5, percentN",
        "feed, percentN=10&months=6, containerLitres",
        "lift, horizontalCm=40&verticalCm=75&travelCm=25&coupling=poor, kg",
        "lift, mix=x&horizontalCm=40&verticalCm=75&travelCm=25&coupling=poor, litres",
        "lift, kg=5&horizontalCm=40&verticalCm=75&travelCm=25&coupling=firm, coupling"
    })
    void whatCannotBeReckonedIsSaidAtItsField(String what, String asked, String field) {
        var answer = teacher.get(ask(what, asked));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString())
                .contains("id=\"reckon-" + field + "-fault\"")
                .doesNotContain("<p class=\"lede\">");
    }

    @Test
    void whatIsTypedIntoACalculatorIsShownAsText() {
        var answer = teacher.get(ask("container", "topLengthMm=<script>alert(1)</script>"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.asString()).contains("&lt;script&gt;").doesNotContain("<script>");
        assertThat(teacher.get("/stock/reckon?what=wire&branchMm=\"><b>").asString())
                .contains("value=\"&quot;&gt;&lt;b&gt;\"");
    }

    @Test
    void aLongShelfHasPages() {
        for (int i = 0; i < 52; i++) {
            materials.enter(actor, new NewStockTool(Goods.name("Spare brush")), null);
        }
        var total = materials.list(actor, StockKind.TOOL, new PageRequest(0, 1)).total();
        assertThat(teacher.get("/stock?shelf=tools").asString())
                .contains("1 to 50 of " + total)
                .contains("/stock?shelf=tools&amp;page=1");
        assertThat(teacher.get("/stock?shelf=tools&page=1").asString())
                .contains("51 to")
                .contains("/stock?shelf=tools&amp;page=0");
        assertThat(teacher.get("/stock?shelf=tools&page=-1").statusCode()).isEqualTo(400);
    }

    private static String ask(String what, String fields) {
        return "/stock/reckon?what=" + what + "&ask=yes&" + fields;
    }

    private static String field(String name, String value) {
        return "name=\"%s\" type=\"text\" value=\"%s\"".formatted(name, value);
    }

    private static void leadsTo(Response answer, String path) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        assertThat(answer.header("Location")).endsWith(path);
    }
}
