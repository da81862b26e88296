package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class RefusedPageTest {

    private static final Pattern LINK_TEXT = Pattern.compile("class=\"tofield\"[^>]*>([^<]*)</a>");

    @Test
    void aLinkToAFieldSaysTheFieldsOwnLabel() {
        var html =
                """
                <title>Maple · Ripewood</title>
                <li><a class="tofield" href="#wound-openMm">open mm</a>: too wide</li>
                <li><a class="tofield" href="#wound-kinds">kinds</a>: choose one</li>
                <label for="wound-note">Note</label>
                <label for="wound-openMm">Open width, $1 <span class="soft">(optional)</span></label>
                """;
        assertThat(RefusedPage.of(html))
                .contains("<title>Not saved: Maple · Ripewood</title>")
                .contains(
                        "<a class=\"tofield\" href=\"#wound-openMm\">Open width, $1</a>: too wide")
                .contains("<a class=\"tofield\" href=\"#wound-kinds\">kinds</a>: choose one");
    }

    @Test
    void faultsStandInTheOrderOfTheirFieldsAndAGroupIsNamedByItsLegend() {
        var html =
                """
                <ul>
                <li><a class="tofield" href="#day-endsAt">ends at</a>: too early</li>
                <li>of no field</li>
                <li><a class="tofield" href="#day-who">who</a>: choose one</li>
                <li><a class="tofield" href="#day-gone">gone</a>: no such field here</li>
                <li><a class="tofield" href="#day-on">on</a>: choose a day</li>
                </ul>
                <label for="day-on">Day</label> <input id="day-on">
                <fieldset class="field" id="day-who">
                <legend>Instructors</legend>
                </fieldset>
                <label for="day-endsAt">Ends</label> <input id="day-endsAt">
                """;
        assertThat(LINK_TEXT.matcher(RefusedPage.labelled(html)).results())
                .extracting(link -> link.group(1))
                .containsExactly("Day", "Instructors", "Ends", "gone");
    }

    @Test
    void daysInFaultsAreWrittenAsEverywhereAndWhatIsNoDayStays() {
        var html =
                """
                <li><a class="tofield" href="#a-on">on</a>: expected a day up to 2026-12-01, found 2026-02-30</li>
                <span class="fault" id="a-on-fault">expected a day up to 2026-12-31</span>
                <input id="a-on" value="2026-12-02">
                """;
        assertThat(RefusedPage.labelled(html))
                .contains("up to 1 December 2026, found 2026-02-30</li>")
                .contains("up to 31 December 2026</span>")
                .contains("value=\"2026-12-02\"");
    }
}
