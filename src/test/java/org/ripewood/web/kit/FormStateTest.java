package org.ripewood.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.ws.rs.core.MultivaluedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

@Tag("fast")
class FormStateTest {

    @Test
    void whatWasTypedIsKeptWithWhatWasWrong() {
        var sent = new MultivaluedHashMap<String, String>();
        sent.putSingle("place", "trunk, left");
        sent.put("roles", List.of("STUDENT", "REGISTRAR"));
        var problem =
                Refused.invalid(
                                List.of(
                                        new Fault("place", "too vague"),
                                        new Fault("roles[1]", "not that one")))
                        .problem();
        var typed = FormState.refused("wound", sent, problem);
        assertThat(typed.value("place")).isEqualTo("trunk, left");
        assertThat(typed.has("roles", "REGISTRAR")).isTrue();
        assertThat(typed.fault("place")).isEqualTo("too vague");
        assertThat(typed.fault("roles")).isEqualTo("not that one");
        assertThat(typed.fault("madeOn")).isNull();
    }

    @Test
    void whatWasTypedStaysInItsOwnForm() {
        var typed = FormState.fresh("wound").with("place", "trunk");
        assertThat(typed.orFresh("branch", FormState.fresh("branch")).value("place")).isEmpty();
        assertThat(typed.orFresh("wound", FormState.fresh("wound")).value("place"))
                .isEqualTo("trunk");
    }

    @Test
    void whatCannotBeSaidAnyMoreIsShownBesideItsForm() {
        var sent = new MultivaluedHashMap<String, String>();
        sent.putSingle("evidence", "2 scales on 20 shoots");
        sent.putSingle("note", " ");
        sent.putSingle("csrf-token", "bm90LXdvcmRz");
        sent.putSingle("version", "7");
        var gone = Refused.conflict("The tree left the school.", null).problem();

        var typed = FormState.refused("report", sent, gone);

        assertThat(typed.overtaken()).isTrue();
        assertThat(typed.sentences()).containsExactly("2 scales on 20 shoots");
        assertThat(FormState.refused("report", sent, Refused.stale("step").problem()).overtaken())
                .isFalse();
        assertThat(FormState.fresh("report").overtaken()).isFalse();
    }

    @Test
    void idsOfFieldsAreGoodForLinks() {
        assertThat(FormState.fresh("assignment").id("waivers.pest_level.atMost"))
                .isEqualTo("assignment-waivers-pest_level-atMost");
        assertThat(FormState.fresh("session").id("instructorIds[0]"))
                .isEqualTo("session-instructorIds");
    }

    @Test
    void keysOfTheFormAndPasswordsAreNothingThatIsKept() {
        var sent =
                Map.of(
                        "csrf-token", List.of("abc"),
                        "once", List.of("def"),
                        "newPassword", List.of("ivory kettle"),
                        "name", List.of(" "));
        assertThat(new FormState("f", sent, null).keepsTyped()).isFalse();
        assertThat(new FormState("f", sent, null).with("name", "Rowan").keepsTyped()).isTrue();
    }
}
