package org.ripewood.materials;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** What is in stock and how it came and went. */
@ApplicationScoped
class MaterialTables implements TableDescriptions {

    private static final String ITEM = "stock_item";

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named(ITEM)
                        .numbered()
                        .oneOf("kind", StockKind.values())
                        .plain("name", "name_key", "unit")
                        .writtenBy("changed_by_id")
                        .plain("changed_at", "used_as", "material", "outline")
                        .plain("top_length_mm", "top_width_mm")
                        .plain("bottom_length_mm", "bottom_width_mm", "depth_mm", "lip_mm")
                        .plain("mass_kg", "dry_low_kg_per_litre", "dry_high_kg_per_litre")
                        .plain("capacity_low", "capacity_high", "air_low", "air_high")
                        .plain("bag_litres", "metal", "gauge_mm")
                        .version()
                        .done(),
                TableDescription.named("stock_mix_part")
                        .orderedBy("mix_id", "position")
                        .partOf("mix_id", ITEM)
                        .plain("position")
                        .refers("substrate_id", ITEM)
                        .plain("parts")
                        .done(),
                TableDescription.named("stock_movement")
                        .numbered()
                        .partOf("item_id", ITEM)
                        .oneOf("kind", MovementKind.values())
                        .plain("amount", "on_day")
                        .words("note")
                        .writtenBy("by_id")
                        .plain("recorded_at")
                        .done());
    }
}
