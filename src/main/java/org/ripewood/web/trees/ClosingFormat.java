package org.ripewood.web.trees;

import io.quarkus.qute.TemplateExtension;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Trunk;
import org.ripewood.core.growth.ClosureForecast;
import org.ripewood.core.season.Outlook;
import org.ripewood.standing.OutlookWords;
import org.ripewood.web.kit.TextFormat;

/** How a wound closes and a trunk thickens, in words. */
@TemplateExtension
final class ClosingFormat {

    private ClosingFormat() {}

    /** When it will have closed, or why nobody can say. */
    static String told(Closing closing) {
        var closed = closing.closed();
        if (closed instanceof Outlook.Already) {
            return "It has closed.";
        }
        if (closed instanceof Outlook.Expected expected) {
            var since = expected.likelySince();
            return since == null
                    ? "Likely to close " + OutlookWords.by(expected) + "."
                    : "It has likely closed over " + OutlookWords.unseen(since) + ".";
        }
        return sentence((Outlook.Unsaid) closed);
    }

    /** What the forecast rests on; empty when there is none. */
    static String basis(Closing closing) {
        var forecast = closing.forecast();
        if (forecast.unsaid().isPresent() || closing.closed() instanceof Outlook.Already) {
            return "";
        }
        if (forecast.basis() == ClosureForecast.Basis.PRIOR_ONLY) {
            return "Nobody has read it since it was made, so this rests on its first width, the kind"
                    + " of tree and the tree's strength alone. The first reading tells more.";
        }
        return forecast.readings() == 1
                ? "Rests on one reading since it was made; a second one tells more."
                : "Rests on %d readings since it was made.".formatted(forecast.readings());
    }

    /** When the trunk's base will be as planned; empty when nothing is planned. */
    static String baseTold(Trunk trunk) {
        var outlook = trunk.baseAsPlanned();
        var plannedMm = trunk.plannedBaseMm();
        if (outlook == null || plannedMm == null) {
            return "";
        }
        var planned = TextFormat.plain(plannedMm) + " mm";
        if (outlook instanceof Outlook.Already) {
            return "Its base is as thick as planned, %s.".formatted(planned);
        }
        if (outlook instanceof Outlook.Expected expected) {
            var since = expected.likelySince();
            return since == null
                    ? "Its base is likely to be as thick as planned, %s, %s."
                            .formatted(planned, OutlookWords.by(expected))
                    : "Its base has likely been as thick as planned, %s, %s."
                            .formatted(planned, OutlookWords.unseen(since));
        }
        return sentence((Outlook.Unsaid) outlook);
    }

    private static String sentence(Outlook.Unsaid unsaid) {
        var because = unsaid.because();
        return because.endsWith(".") ? because : because + ".";
    }
}
