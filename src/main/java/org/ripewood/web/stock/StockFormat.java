package org.ripewood.web.stock;

import io.quarkus.qute.TemplateExtension;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Container;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.Span;
import org.ripewood.materials.Movement;
import org.ripewood.materials.MovementKind;
import org.ripewood.materials.StockDetail;
import org.ripewood.materials.StockItem;
import org.ripewood.web.kit.TextFormat;

/** How stock is written on pages. */
@TemplateExtension
final class StockFormat {

    private StockFormat() {}

    /** Amount and unit; of wire how long that is as well. */
    static String inStock(StockItem item) {
        var amount = item.amount().toPlainString() + " " + unitOf(item);
        return item.detail() instanceof StockDetail.Wire wire
                ? "%s (%s m)"
                        .formatted(
                                amount,
                                TextFormat.plain(
                                        wire.metal()
                                                .metresIn(
                                                        item.amount().doubleValue(),
                                                        wire.gaugeMm())))
                : amount;
    }

    private static String unitOf(StockItem item) {
        boolean single = item.unit().equals("pieces") && item.amount().intValue() == 1;
        return single ? "piece" : item.unit();
    }

    /** Name of the form field with a substrate's parts in a mix. */
    static String partField(StockItem substrate) {
        return "parts." + substrate.id();
    }

    /** What an amount of it is asked for with. */
    static String amountLabel(StockItem item) {
        return "Amount, " + item.unit();
    }

    /** What it is, in a line. */
    static String what(StockItem item) {
        var detail = item.detail();
        if (detail instanceof StockDetail.Container container) {
            return what(container);
        }
        if (detail instanceof StockDetail.Substrate substrate) {
            return what(substrate);
        }
        return detail instanceof StockDetail.Mix mix ? recipe(mix) : "";
    }

    private static String what(StockDetail.Container detail) {
        return "%s, %s %s"
                        .formatted(
                                TextFormat.small(detail.use()),
                                TextFormat.small(detail.sizes().outline()),
                                sizes(detail))
                + (detail.material() == null ? "" : ", " + detail.material());
    }

    /** Length, width and depth inside. */
    static String sizes(StockDetail.Container detail) {
        var sizes = detail.sizes();
        var length = TextFormat.plain(sizes.topLengthMm());
        var depth = TextFormat.plain(sizes.depthMm());
        return sizes.outline() == Outline.ROUND
                ? "%s mm across, %s mm deep".formatted(length, depth)
                : "%s × %s mm, %s mm deep"
                        .formatted(length, TextFormat.plain(sizes.topWidthMm()), depth);
    }

    private static String what(StockDetail.Substrate substrate) {
        var parts =
                List.of(
                        known(substrate.dryKgPerLitre(), 1, "kg a litre dry"),
                        known(substrate.capacityShare(), 100, "% water when drained"),
                        known(substrate.airShare(), 100, "% air"));
        var words =
                parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
        return words.isEmpty() ? "nothing measured yet" : words;
    }

    private static String known(@Nullable Span span, double factor, String unit) {
        return span == null ? "" : range(span, factor) + " " + unit;
    }

    /** A value, or both ends of a range. */
    static String range(Span span, double factor) {
        var low = TextFormat.plain(span.low() * factor);
        var high = TextFormat.plain(span.high() * factor);
        return low.equals(high) ? low : low + " to " + high;
    }

    /** Such as {@code 2 parts akadama, 1 part pumice}. */
    static String recipe(StockDetail.Mix mix) {
        return mix.parts().stream()
                .map(
                        part ->
                                "%s part%s %s"
                                        .formatted(
                                                TextFormat.plain(part.parts()),
                                                part.parts() == 1 ? "" : "s",
                                                part.substrate()))
                .collect(Collectors.joining(", "));
    }

    /** The container as it is planted; sizes in stock always make one. */
    static Container planted(StockDetail.Container detail) {
        return detail.sizes().reckon().find().orElseThrow();
    }

    static List<String> remarks(StockDetail.Container detail) {
        return detail.sizes().reckon().remarks();
    }

    static String word(MovementKind kind) {
        return switch (kind) {
            case RECEIVED -> "Came";
            case TAKEN -> "Went";
            case COUNTED -> "Counted";
        };
    }

    /** What changed, with its sign. */
    static String change(Movement movement) {
        var text = movement.amount().toPlainString().replace('-', '−');
        return movement.amount().signum() > 0 ? "+" + text : text;
    }
}
