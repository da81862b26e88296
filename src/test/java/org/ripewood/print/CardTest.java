package org.ripewood.print;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.trees.Tree;

/** The card on a tree and the record that travels with it, asked for as a browser does. */
@Tag("one-database")
@QuarkusTest
@TestProfile(CardTest.BehindAProxy.class)
class CardTest {

    /** A proxy that speaks TLS stands before the service and is believed. */
    public static class BehindAProxy extends SchoolProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            var overrides = new HashMap<>(super.getConfigOverrides());
            overrides.put("quarkus.http.proxy.proxy-address-forwarding", "true");
            overrides.put("quarkus.http.proxy.enable-forwarded-host", "true");
            overrides.put("ripewood.costly.most-a-minute", String.valueOf(MOST_A_MINUTE));
            return overrides;
        }
    }

    private static final int MOST_A_MINUTE = 2;

    @Inject School school;
    @Inject PeopleUnchecked peopleUnchecked;

    private School.Group group;
    private Tree tree;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
    }

    @Test
    void theCodeOnTheSheetLeadsToTheTreesPage() throws Exception {
        for (var size : PaperSize.values()) {
            var answer = get(group.student(), "/card.pdf?size=" + size.code(), Map.of());
            assertThat(answer.contentType()).isEqualTo("application/pdf");
            assertThat(answer.header("Content-Disposition"))
                    .isEqualTo(
                            "inline; filename=\"card-%s.pdf\""
                                    .formatted(
                                            tree.label()
                                                    .toLowerCase(Locale.ROOT)
                                                    .replace(' ', '-')));
            assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
            try (var pdf = Pdf.of(answer.asByteArray())) {
                var codes = read(pdf.picture(1, 200));
                assertThat(codes).hasSize(1);
                assertThat(codes.get(0)).endsWith("/trees/" + tree.id()).startsWith("http://");
                var page = given().redirects().follow(false).get(codes.get(0));
                assertThat(page.statusCode()).as("nobody is let in by it").isEqualTo(303);
            }
        }
    }

    /** 429: RFC 6585, 4; Retry-After: RFC 9110, 10.2.3. */
    @Test
    void onePersonHasSoManyPapersAMinute() {
        for (int i = 0; i < MOST_A_MINUTE; i++) {
            assertThat(get(group.student(), "/card.pdf", Map.of()).statusCode()).isEqualTo(200);
        }
        var refused = get(group.student(), "/card.pdf", Map.of());
        assertThat(refused.statusCode()).isEqualTo(429);
        assertThat(refused.header("Retry-After")).isEqualTo("10");
        assertThat(refused.asString()).contains("Too many in a short time", "Maybe wait");
        assertThat(get(group.student(), "/card", Map.of()).statusCode()).isEqualTo(200);
        assertThat(get(group.instructor(), "/card.pdf", Map.of()).statusCode()).isEqualTo(200);
    }

    @Test
    void theAddressIsThatOfTheProxy() throws Exception {
        var forwarded =
                Map.of(
                        "X-Forwarded-Proto", "https",
                        "X-Forwarded-Host", "trees.example",
                        "X-Forwarded-Port", "443");
        var expected = "https://trees.example/trees/" + tree.id();
        assertThat(get(group.student(), "/card", forwarded).asString()).contains(expected);
        var pdf = get(group.student(), "/card.pdf", forwarded).asByteArray();
        try (var read = Pdf.of(pdf)) {
            assertThat(read.text()).contains(expected);
            assertThat(read(read.picture(1, 200))).containsExactly(expected);
        }
    }

    /** Level Q of ISO/IEC 18004 restores about a quarter of the codewords. */
    @Test
    void aCodeWithABlotStillReads() throws Exception {
        try (var pdf = Pdf.of(get(group.student(), "/card.pdf", Map.of()).asByteArray())) {
            var picture = pdf.picture(1, 200);
            var clean = results(picture)[0];
            // corner marks of lower left, upper left, upper right
            var marks = clean.getResultPoints();
            float side = marks[2].getX() - marks[1].getX();
            int blot = Math.round(side / 4);
            picture.createGraphics()
                    .fillOval(
                            Math.round(marks[1].getX() + side / 2) - blot / 2,
                            Math.round(marks[1].getY() + side / 2) - blot / 2,
                            blot,
                            blot);
            assertThat(read(picture)).containsExactly(clean.getText());
        }
    }

    @Test
    void everyTreeOfACourseHasItsCard() throws Exception {
        var ids = new TreeSet<Long>();
        ids.add(tree.id());
        for (int i = 0; i < 11; i++) {
            ids.add(school.tree(group.instructor(), group.student(), "acer_palmatum").id());
        }
        for (var size : PaperSize.values()) {
            var answer =
                    as(group.instructor())
                            .get(
                                    "/courses/%d/cards.pdf?size=%s"
                                            .formatted(group.course().id(), size.code()));
            try (var pdf = Pdf.of(answer.asByteArray())) {
                assertThat(pdf.document.getNumberOfPages()).isEqualTo(2);
                var found = new TreeSet<Long>();
                for (int page = 1; page <= 2; page++) {
                    for (var code : read(pdf.picture(page, 200))) {
                        found.add(Long.valueOf(code.replaceFirst(".*/trees/", "")));
                    }
                }
                assertThat(found).isEqualTo(ids);
            }
        }
    }

    @Test
    void whatHangsInTheOpenNamesNobody() throws Exception {
        var keeper = peopleUnchecked.get(group.student().personId());
        var card = get(group.student(), "/card", Map.of()).asString();
        var cards = as(group.instructor()).get("/courses/" + group.course().id() + "/cards");
        for (var html : List.of(card, cards.asString())) {
            assertThat(html)
                    .contains(tree.label(), "Tree " + tree.id())
                    .doesNotContain(keeper.name(), "Stan", "Ines", keeper.login());
        }
    }

    @Test
    void aPassportNamesNobody() throws Exception {
        school.see(group.instructor(), tree, "vigour_index", "70");
        school.see(group.student(), tree, "pest_level", "1");
        school.wound(group.student(), tree, "first branch", 24);
        for (var reader : List.of(group.student(), group.instructor())) {
            var html = get(reader, "/passport", Map.of()).asString();
            assertThat(html).contains(tree.label(), "first branch", "Vigour");
            assertThat(html).doesNotContain("Stan", "Ines", "person-");
            try (var pdf = Pdf.of(get(reader, "/passport.pdf", Map.of()).asByteArray())) {
                assertThat(pdf.text())
                        .contains(tree.label(), "first branch", "Handed on")
                        .doesNotContain("Stan", "Ines", "person-");
            }
        }
    }

    private static List<String> read(BufferedImage picture) throws NotFoundException {
        return Arrays.stream(results(picture)).map(Result::getText).toList();
    }

    private static Result[] results(BufferedImage picture) throws NotFoundException {
        int width = picture.getWidth();
        int height = picture.getHeight();
        var pixels = picture.getRGB(0, 0, width, height, null, 0, width);
        var bitmap =
                new BinaryBitmap(
                        new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
        return new QRCodeMultiReader()
                .decodeMultiple(bitmap, Map.of(DecodeHintType.TRY_HARDER, true));
    }

    private Response get(Actor who, String path, Map<String, String> headers) {
        return as(who).headers(headers).get("/trees/" + tree.id() + path);
    }

    private RequestSpecification as(Actor who) {
        var cookies =
                given().redirects()
                        .follow(false)
                        .formParam("j_username", peopleUnchecked.get(who.personId()).login())
                        .formParam("j_password", "long enough a password")
                        .post("/j_security_check")
                        .cookies();
        return given().redirects().follow(false).cookies(cookies);
    }
}
