package org.ripewood.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.materials.Goods;
import org.ripewood.materials.NewStock;

/** Calls about what is in stock, each on an item of its own. */
final class StockCalls {

    private final School school;

    StockCalls(School school) {
        this.school = school;
    }

    Call of(Endpoint endpoint, List<String> words) {
        var last = words.get(words.size() - 1);
        if (words.size() == 1 || last.equals("reckon")) {
            return new Call(endpoint, endpoint.path(), null, null);
        }
        if (last.equals("movements")) {
            var movement =
                    fields(
                            "kind",
                            "TAKEN",
                            "amount",
                            1.0,
                            "on",
                            school.today().date().toString(),
                            "note",
                            "lent out");
            return at(endpoint, school.tools().id(), null, movement);
        }
        var kind = words.get(1).startsWith("{") ? "tools" : words.get(1);
        if (!last.equals("{id}")) {
            var url = endpoint.path().replace("{kind}", kind);
            return new Call(endpoint, url, description(kind), null);
        }
        var item = school.stocked(example(kind));
        var fields = description(kind);
        if (!endpoint.api()) {
            fields.put("version", item.version());
        }
        return at(endpoint, item.id(), item.version(), fields);
    }

    private static Call at(Endpoint endpoint, long id, Long version, Map<String, Object> fields) {
        var url = endpoint.path().replace("{id}", "" + id);
        return new Call(endpoint, url, endpoint.writes() ? fields : null, version);
    }

    private NewStock example(String kind) {
        return switch (kind) {
            case "containers" -> Goods.oval(300, 200, 60, 10);
            case "substrates" -> Goods.bark();
            case "mixes" -> Goods.mix(Map.of(school.stocked(Goods.bark()).id(), 1.0));
            case "wires" -> Goods.wire();
            case "supplies" -> Goods.supply();
            default -> Goods.tool();
        };
    }

    private Map<String, Object> description(String kind) {
        return switch (kind) {
            case "containers" ->
                    fields(
                            "name",
                            Goods.name("Oval"),
                            "use",
                            "SHOW",
                            "outline",
                            "OVAL",
                            "topLengthMm",
                            300.0,
                            "topWidthMm",
                            200.0,
                            "bottomLengthMm",
                            280.0,
                            "bottomWidthMm",
                            180.0,
                            "depthMm",
                            60.0,
                            "lipMm",
                            10.0,
                            "material",
                            "stoneware",
                            "massKg",
                            2.5);
            case "substrates" ->
                    fields(
                            "name",
                            Goods.name("Pumice"),
                            "dryKgPerLitre",
                            0.4,
                            "dryKgPerLitreTo",
                            5.0,
                            "capacityPercent",
                            0.0,
                            "capacityPercentTo",
                            100.0,
                            "airPercent",
                            0.0,
                            "airPercentTo",
                            100.0,
                            "bagLitres",
                            14.0);
            case "mixes" ->
                    fields(
                            "name",
                            Goods.name("Mix"),
                            "parts",
                            Map.of("" + school.stocked(Goods.bark()).id(), 2.0));
            case "wires" -> fields("metal", "ALUMINIUM", "gaugeMm", Goods.wire().gaugeMm());
            case "supplies" -> fields("name", Goods.name("Mesh"), "unit", "m");
            default -> fields("name", Goods.name("Sickle saw"));
        };
    }

    /** Names and values in turn. */
    private static Map<String, Object> fields(Object... inTurn) {
        var fields = new LinkedHashMap<String, Object>();
        for (int i = 0; i < inTurn.length; i += 2) {
            fields.put((String) inTurn[i], inTurn[i + 1]);
        }
        return fields;
    }
}
