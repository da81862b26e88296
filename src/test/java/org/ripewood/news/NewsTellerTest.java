package org.ripewood.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.cases.ShippedContent.CONTENT;

import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What happened, in sentences, with the page to look at. */
@Tag("fast")
class NewsTellerTest {

    private static final Instant AT = Instant.parse("2026-12-01T09:00:00Z");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ASSIGNED|root_check|Ines assigned “Check the roots” for Elm 7.|/steps/3",
                "REPORTED|root_check|Ines reported “Check the roots” on Elm 7.|/steps/3",
                "SENT_BACK|root_check|Ines sent back “Check the roots” on Elm 7.|/steps/3",
                "SIGNED_OFF|root_check|Ines signed off “Check the roots” on Elm 7.|/steps/3",
                "WITHDRAWN|root_check|Ines withdrew “Check the roots” for Elm 7.|/steps/3",
                "FOUND_DONE|root_check|Ines noted “Check the roots” as done on Elm 7.|/steps/3",
                "ASKED_STEP|root_check|Ines asks for “Check the roots” on Elm 7.|/trees/7/asks#ask-3",
                "ASKED_QUESTION|root_check|Ines asks about “Check the roots” on Elm"
                        + " 7.|/trees/7/asks#ask-3",
                "ANSWERED|gone_since|Ines answered about “gone_since” on Elm"
                        + " 7.|/trees/7/asks#ask-3",
                "STAGE|structure|Ines confirmed the stage “Build the structure” for Elm"
                        + " 7.|/trees/7/techniques#stage",
                "MOVED|2026-12-04/2026-12-11|Ines moved the class of 4 December 2026 to 11 December"
                        + " 2026, Structure.|/sessions/3",
                "MOVED|2026-12-04/2026-12-04|Ines changed the time or place of the class of 4"
                        + " December 2026, Structure.|/sessions/3",
                "CANCELLED|2026-12-04|Ines cancelled the class of 4 December 2026,"
                        + " Structure.|/sessions/3",
                "GIVEN_UP|2026-12-04|Ines gave up the place of Elm 7 in the class of 4 December"
                        + " 2026.|/sessions/3",
            })
    void everyKindHasItsSentence(String what, String code, String sentence, String path) {
        var row = new NewsRow(AT, what, "Ines", 7L, "Elm 7", "Structure", 3, code);
        assertThat(new NewsTeller(CONTENT).tell(row)).isEqualTo(new NewsLine(AT, sentence, path));
    }
}
