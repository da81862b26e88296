package org.ripewood.web.stock;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.materials.StockItem;
import org.ripewood.web.kit.Label;

/** The fields by which things in stock are described, of every kind. */
final class StockLabels {

    private static final List<Label> ALL =
            List.of(
                    Label.of("name", "Name"),
                    Label.of("use", "Used as"),
                    Label.of("material", "Material"),
                    Label.of("outline", "Outline"),
                    Label.of("topLengthMm", "Length at the top, mm"),
                    Label.of("topWidthMm", "Width at the top, mm"),
                    Label.of("bottomLengthMm", "Length at the bottom, mm"),
                    Label.of("bottomWidthMm", "Width at the bottom, mm"),
                    Label.of("depthMm", "Depth, mm"),
                    Label.of("lipMm", "Lip, mm"),
                    Label.of("massKg", "Empty weight, kg"),
                    Label.of("dryKgPerLitre", "Dry weight of a litre, kg"),
                    Label.of("dryKgPerLitreTo", "Dry weight of a litre up to, kg"),
                    Label.of("capacityPercent", "Water when drained, %"),
                    Label.of("capacityPercentTo", "Water when drained up to, %"),
                    Label.of("airPercent", "Air when drained, %"),
                    Label.of("airPercentTo", "Air when drained up to, %"),
                    Label.of("bagLitres", "Litres in a bag"),
                    Label.of("metal", "Metal"),
                    Label.of("gaugeMm", "Thickness, mm"),
                    Label.of("unit", "Counted in"));

    private StockLabels() {}

    /**
     * @param substrates what a mix can have parts of
     */
    static List<Label> of(List<StockItem> substrates) {
        var labels = new ArrayList<>(ALL);
        substrates.forEach(
                one -> labels.add(Label.of("parts." + one.id(), "Parts of " + one.name())));
        return labels;
    }
}
