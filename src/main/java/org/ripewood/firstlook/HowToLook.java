package org.ripewood.firstlook;

import java.util.Set;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.Habit;
import org.ripewood.standing.TreeOnDay;

/** How to look at a tree for a question: by what it stands in, and by what its kind shows. */
public final class HowToLook {

    /** Their buds have no scales, so no ring is left where a shoot began. */
    private static final Set<String> WITHOUT_SCALES = Set.of("juniper", "cypress");

    private HowToLook() {}

    /** The way to look that fits a tree; that of the question itself for most. */
    public static String of(LookQuestion question, TreeOnDay tree) {
        return switch (question) {
            case FIRM ->
                    inGround(tree)
                            ? "Take the trunk just above the soil between two fingers, and rock it gently."
                            : question.how();
            case ROOTS ->
                    inGround(tree)
                            ? "Look at the surface round the foot. Follow the thickest root that runs round the"
                                    + " trunk. Brush soil aside, but do not dig."
                            : question.how();
            case WATER ->
                    inGround(tree)
                            ? "Push a wooden stick a hand deep into the soil and pull it out after five minutes:"
                                    + " is it dark with moisture? Then pour a can of water at the foot and watch."
                            : question.how();
            case SHOOTS ->
                    showsRings(tree.subject().traits())
                            ? question.how()
                            : "Choose five uncut shoots in full light in the upper third. Measure the part that"
                                    + " grew this season, by its fresh bark and leaves, and take the mean.";
            default -> question.how();
        };
    }

    private static boolean inGround(TreeOnDay tree) {
        var kind = tree.subject().facts().find(Fact.CONTAINER_KIND);
        return kind != null && kind.value().equals(Value.of("ground"));
    }

    /** Whether winter buds leave a ring of scars where a shoot began. */
    private static boolean showsRings(Traits traits) {
        return traits.habit() != Habit.TROPICAL
                && traits.groups().stream().noneMatch(WITHOUT_SCALES::contains);
    }
}
