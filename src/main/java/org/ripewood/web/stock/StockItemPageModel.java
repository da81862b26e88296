package org.ripewood.web.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.ContainerSizes;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.Span;
import org.ripewood.materials.Movement;
import org.ripewood.materials.StockDetail;
import org.ripewood.materials.StockItem;
import org.ripewood.platform.Paged;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.TextFormat;

/**
 * All that the page of a thing in stock shows.
 *
 * @param names of those who moved it or said what it is, by id
 * @param substrates what mixes can be made of
 */
record StockItemPageModel(
        StockItem item,
        Paged<Movement> movements,
        Map<Long, String> names,
        List<StockItem> substrates,
        LocalDate today,
        FormState typed) {

    public StockCategory shelf() {
        return StockCategory.of(item.kind());
    }

    public StockDetail.@Nullable Container container() {
        return item.detail() instanceof StockDetail.Container container ? container : null;
    }

    public String name(long personId) {
        return names.getOrDefault(personId, "");
    }

    public FormState move() {
        return typed.orFresh("move", FormState.fresh("move").with("on", today));
    }

    /** What it is now, to be changed. */
    public FormState change() {
        return typed.orFresh("stock", described(item));
    }

    /** The form for it, as it stands now. */
    static FormState described(StockItem item) {
        return withDetail(item).with("version", item.version());
    }

    private static FormState withDetail(StockItem item) {
        var fresh = FormState.fresh("stock").with("name", item.name());
        var detail = item.detail();
        if (detail instanceof StockDetail.Container container) {
            return sizes(fresh, container.sizes())
                    .with("use", TextFormat.small(container.use()))
                    .withIfKnown("material", container.material())
                    .withIfKnown("massKg", shown(container.massKg()));
        }
        if (detail instanceof StockDetail.Substrate substrate) {
            return span(
                            span(
                                    span(fresh, "dryKgPerLitre", substrate.dryKgPerLitre(), 1),
                                    "capacityPercent",
                                    substrate.capacityShare(),
                                    100),
                            "airPercent",
                            substrate.airShare(),
                            100)
                    .withIfKnown("bagLitres", shown(substrate.bagLitres()));
        }
        if (detail instanceof StockDetail.Mix mix) {
            var typed = fresh;
            for (var part : mix.parts()) {
                typed = typed.with("parts." + part.substrateId(), TextFormat.plain(part.parts()));
            }
            return typed;
        }
        return detail instanceof StockDetail.Wire wire
                ? fresh.with("metal", TextFormat.small(wire.metal()))
                        .with("gaugeMm", TextFormat.plain(wire.gaugeMm()))
                : fresh.with("unit", item.unit());
    }

    private static FormState sizes(FormState typed, ContainerSizes sizes) {
        boolean round = sizes.outline() == Outline.ROUND;
        boolean upright =
                sizes.topLengthMm() == sizes.bottomLengthMm()
                        && sizes.topWidthMm() == sizes.bottomWidthMm();
        return typed.with("outline", TextFormat.small(sizes.outline()))
                .with("topLengthMm", TextFormat.plain(sizes.topLengthMm()))
                .withIfKnown("topWidthMm", round ? null : TextFormat.plain(sizes.topWidthMm()))
                .withIfKnown(
                        "bottomLengthMm", upright ? null : TextFormat.plain(sizes.bottomLengthMm()))
                .withIfKnown(
                        "bottomWidthMm",
                        upright || round ? null : TextFormat.plain(sizes.bottomWidthMm()))
                .with("depthMm", TextFormat.plain(sizes.depthMm()))
                .with("lipMm", TextFormat.plain(sizes.lipMm()));
    }

    private static FormState span(
            FormState typed, String field, @Nullable Span span, double factor) {
        if (span == null) {
            return typed;
        }
        return typed.with(field, TextFormat.plain(span.low() * factor))
                .withIfKnown(
                        field + "To", span.exact() ? null : TextFormat.plain(span.high() * factor));
    }

    private static @Nullable String shown(@Nullable Double value) {
        return value == null ? null : TextFormat.plain(value);
    }
}
