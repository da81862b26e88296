package org.ripewood.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.audit.Change.Kind;

@Tag("fast")
class CollectedTest {

    private final Collected collected = new Collected();

    @Test
    void rowsWhoseIdsFollowEachOtherAreToldAsOne() {
        for (long id : new long[] {7, 5, 6, 6, 9}) {
            collected.row("tree", Kind.INSERTED, id);
        }
        assertThat(collected.changes())
                .containsExactly(
                        new Change("tree", Kind.INSERTED, 5L, 7L, 3),
                        new Change("tree", Kind.INSERTED, 9L, 9L, 1));
    }

    @Test
    void whatIsNewWasNotChangedAsWell() {
        collected.row("tree", Kind.INSERTED, 5L);
        collected.row("tree", Kind.CHANGED, 5L);
        collected.row("tree", Kind.CHANGED, 4L);
        assertThat(collected.changes())
                .containsExactly(
                        new Change("tree", Kind.INSERTED, 5L, 5L, 1),
                        new Change("tree", Kind.CHANGED, 4L, 4L, 1));
    }

    @Test
    void rowsWithoutIdsAreCounted() {
        collected.row("day_break", Kind.INSERTED, null);
        collected.rows("day_break", Kind.INSERTED, 4);
        assertThat(collected.changes())
                .containsExactly(new Change("day_break", Kind.INSERTED, null, null, 5));
    }

    @Test
    void aHundredThousandRowsOfAnImportAreOneChange() {
        for (long id = 1; id <= 100_000; id++) {
            collected.row("observation", Kind.INSERTED, id);
        }
        assertThat(collected.changes())
                .containsExactly(new Change("observation", Kind.INSERTED, 1L, 100_000L, 100_000));
    }
}
