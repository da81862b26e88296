package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class RefusedPageTest {

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
}
