package org.ripewood.web.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Stream;
import org.ripewood.materials.Materials;
import org.ripewood.materials.Movement;
import org.ripewood.materials.StockItem;
import org.ripewood.materials.StockKind;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Today;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;

/** Lays out what the pages of the stock show. */
@ApplicationScoped
class StockPageAssembler {

    private static final int ROWS = 50;
    private static final int MOVEMENTS = 20;
    private static final int MOST_SUBSTRATES = 200;

    private final Materials materials;
    private final People people;
    private final Today today;
    private final EditConflicts clashes;

    StockPageAssembler(Materials materials, People people, Today today, EditConflicts clashes) {
        this.materials = materials;
        this.people = people;
        this.today = today;
        this.clashes = clashes;
    }

    StockPageModel shelf(Actor actor, StockCategory shelf, int page, FormState typed) {
        var counts = materials.counts(actor);
        return new StockPageModel(
                shelf,
                List.of(StockCategory.values()).stream()
                        .map(
                                one ->
                                        new StockPageModel.Tab(
                                                one, counts.getOrDefault(one.kind(), 0L)))
                        .toList(),
                materials.list(actor, shelf.kind(), new PageRequest(page, ROWS)),
                substrates(actor, shelf.kind()),
                typed);
    }

    StockItemPageModel item(Actor actor, long id, int page, FormState typed) {
        var item = materials.get(actor, id);
        var movements = materials.movements(actor, id, new PageRequest(page, MOVEMENTS));
        var persons =
                Stream.concat(
                                movements.items().stream().map(Movement::byId),
                                Stream.of(item.changedById()))
                        .distinct()
                        .toList();
        var substrates = substrates(actor, item.kind());
        return new StockItemPageModel(
                item,
                movements,
                people.names(persons),
                substrates,
                today.date(),
                clashes.mend(
                        typed,
                        StockItemPageModel.described(item),
                        new EditConflicts.About(
                                "stock_item", id, StockLabels.of(substrates), people::names)));
    }

    private List<StockItem> substrates(Actor actor, StockKind kind) {
        return kind == StockKind.MIX
                ? materials
                        .list(actor, StockKind.SUBSTRATE, new PageRequest(0, MOST_SUBSTRATES))
                        .items()
                : List.of();
    }
}
