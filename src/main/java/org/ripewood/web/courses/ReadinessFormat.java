package org.ripewood.web.courses;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ripewood.core.progress.Verdict;
import org.ripewood.readiness.ReadinessSheet.Cell;
import org.ripewood.readiness.ReadinessSheet.Stage;

/** A readiness sheet as it is shown. */
@TemplateExtension
final class ReadinessFormat {

    /** Lengths of the five parts of the stage band, each shorter, as on a shoot. */
    private static final int[] INTERNODES = {30, 24, 19, 15, 12};

    private static final int GAP = 2;

    private ReadinessFormat() {}

    /** A state in the words of the sheet. */
    static String word(Verdict state) {
        return switch (state) {
            case READY -> "ready";
            case HELD -> "held";
            case MEASURE -> "to measure";
            case SEASON -> "out of season";
            case LESSON -> "to learn first";
            case DONE -> "done";
            case NOT_NEEDED -> "not needed";
        };
    }

    static String word(Cell cell) {
        return word(cell.state());
    }

    /** Class of a cell in the style sheets, by how much it matters. */
    static String style(Cell cell) {
        return "w-" + cell.weight().name().toLowerCase(Locale.ROOT);
    }

    static boolean done(Cell cell) {
        return cell.state() == Verdict.DONE;
    }

    /**
     * A part of the stage band.
     *
     * @param filled how much of its length
     */
    public record Internode(int from, int length, int filled) {}

    /** The stage band: passed stages filled, the tree's own as far as it is. */
    static List<Internode> internodes(Stage stage) {
        var parts = new ArrayList<Internode>();
        int from = 0;
        for (int i = 0; i < INTERNODES.length; i++) {
            int length = INTERNODES[i] - GAP;
            double share = i + 1 < stage.order() ? 1 : i + 1 > stage.order() ? 0 : stage.howFar();
            parts.add(new Internode(from, length, (int) Math.floor(share * length)));
            from += INTERNODES[i];
        }
        return parts;
    }
}
