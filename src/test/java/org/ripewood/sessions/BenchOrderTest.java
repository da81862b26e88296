package org.ripewood.sessions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class BenchOrderTest {

    @Test
    void benchesFollowEachOtherAsTheyAreCounted() {
        var shuffled = Stream.of("10", "2", "B1", "A10", "1", "A2", "by the door", "02");
        assertThat(shuffled.sorted(BenchOrder.AS_COUNTED))
                .containsExactly("1", "02", "2", "10", "A2", "A10", "B1", "by the door");
    }

    @Test
    void aNumberAsLongAsABenchMayBeIsNoTrouble() {
        var longest = "9".repeat(20);
        assertThat(Stream.of(longest, "3").sorted(BenchOrder.AS_COUNTED))
                .containsExactly("3", longest);
    }
}
