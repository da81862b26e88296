package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.materials.ContainerUse;
import org.ripewood.materials.MovementKind;
import org.ripewood.materials.NewMovement;
import org.ripewood.materials.NewStock;
import org.ripewood.materials.NewStockContainer;
import org.ripewood.materials.NewStockMix;
import org.ripewood.materials.NewStockSubstrate;
import org.ripewood.materials.NewStockSupply;
import org.ripewood.materials.NewStockTool;
import org.ripewood.materials.NewStockWire;

/** Reads {@code stock.yaml}: what the school has, and what became of it. */
final class StockFile {

    private record Moved(Ref by, NewMovement movement, Place place) {}

    private final Rooms rooms;
    private final Script script;

    StockFile(Rooms rooms, Script script) {
        this.rooms = rooms;
        this.script = script;
    }

    void read(Entry file, Page page) {
        for (var entry : file.entries("containers")) {
            add(entry, page, container(entry));
        }
        for (var entry : file.entries("substrates")) {
            add(entry, page, substrate(entry));
        }
        for (var entry : file.entries("mixes")) {
            addMix(entry, page);
        }
        for (var entry : file.entries("wires")) {
            add(
                    entry,
                    page,
                    new NewStockWire(
                            entry.word("metal", WireMetal.class), entry.number("gaugeMm")));
        }
        for (var entry : file.entries("tools")) {
            add(entry, page, new NewStockTool(entry.text("name")));
        }
        for (var entry : file.entries("supplies")) {
            add(entry, page, new NewStockSupply(entry.text("name"), entry.text("unit")));
        }
        file.close();
    }

    private void add(Entry entry, Page page, NewStock stock) {
        var item = declare(entry, stock);
        var by = script.by(entry);
        var amount = entry.numberOrNull("amount");
        var moved = moved(entry);
        script.add(
                entry,
                page.loadingDay(),
                register ->
                        register.put(
                                item,
                                rooms.materials
                                        .enter(register.actor(by), rooms.checked(stock), null)
                                        .id()));
        moved.forEach(one -> move(item, one));
        if (amount != null) {
            var counted = new NewMovement(MovementKind.COUNTED, amount, page.loadingDay(), null);
            move(item, new Moved(by, counted, entry.place()));
        }
    }

    private void move(Ref item, Moved moved) {
        script.add(
                moved.place(),
                moved.movement().on(),
                register ->
                        rooms.materials.move(
                                register.actor(moved.by()),
                                register.id(item),
                                rooms.checked(moved.movement())));
    }

    private List<Moved> moved(Entry item) {
        var moved = new ArrayList<Moved>();
        for (var entry : item.entries("movements")) {
            var movement =
                    new NewMovement(
                            entry.word("kind", MovementKind.class),
                            entry.number("amount"),
                            entry.day("day"),
                            entry.textOrNull("note"));
            var by = script.by(entry);
            entry.close();
            if (entry.sound()) {
                moved.add(new Moved(by, movement, entry.place()));
            }
        }
        return moved;
    }

    /** Files name a mix's substrates; ids are known when those are entered. */
    private void addMix(Entry entry, Page page) {
        var name = entry.text("name");
        var by = script.by(entry);
        var parts = new LinkedHashMap<Ref, Double>();
        entry.table("parts")
                .forEach(
                        (substrate, cell) -> {
                            var at = Place.of(page.file(), cell.line(), "");
                            var count = Entry.parseNumber(cell.text());
                            if (count == null) {
                                entry.fault(
                                        "parts",
                                        "parts must be numbers, found \"%s\""
                                                .formatted(cell.text()));
                            } else {
                                parts.put(
                                        script.codes().mention(Ref.substrate(substrate), at, ""),
                                        count);
                            }
                        });
        script.codes().declare(Ref.stock("mix", name), entry, "name");
        script.add(
                entry,
                page.loadingDay(),
                register ->
                        rooms.materials.enter(
                                register.actor(by),
                                rooms.checked(new NewStockMix(name, ids(parts, register))),
                                null));
    }

    private static Map<String, Double> ids(Map<Ref, Double> parts, ImportedIds register) {
        var byId = new LinkedHashMap<String, Double>();
        parts.forEach((substrate, count) -> byId.put("" + register.id(substrate), count));
        return byId;
    }

    private Ref declare(Entry entry, NewStock stock) {
        var ref =
                stock instanceof NewStockSubstrate
                        ? Ref.substrate(stock.name())
                        : Ref.stock(stock.kind().name(), stock.name());
        return script.codes().declare(ref, entry, "name");
    }

    private static NewStockContainer container(Entry entry) {
        return new NewStockContainer(
                entry.text("name"),
                entry.word("use", ContainerUse.class),
                entry.word("outline", Outline.class),
                entry.number("topLengthMm"),
                entry.numberOrNull("topWidthMm"),
                entry.numberOrNull("bottomLengthMm"),
                entry.numberOrNull("bottomWidthMm"),
                entry.number("depthMm"),
                entry.numberOrNull("lipMm"),
                entry.textOrNull("material"),
                entry.numberOrNull("massKg"));
    }

    private static NewStockSubstrate substrate(Entry entry) {
        return new NewStockSubstrate(
                entry.text("name"),
                entry.numberOrNull("dryKgPerLitre"),
                entry.numberOrNull("dryKgPerLitreTo"),
                entry.numberOrNull("capacityPercent"),
                entry.numberOrNull("capacityPercentTo"),
                entry.numberOrNull("airPercent"),
                entry.numberOrNull("airPercentTo"),
                entry.numberOrNull("bagLitres"));
    }
}
