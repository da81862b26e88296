package org.ripewood.materials;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.WireMetal;

/** Things to enter into stock, each with a name of its own. */
public final class Goods {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    private Goods() {}

    public static String name(String of) {
        return of + " " + NUMBER.incrementAndGet();
    }

    public static NewStockContainer oval(
            double lengthMm, double widthMm, double depthMm, double lipMm) {
        return new NewStockContainer(
                name("Oval"),
                ContainerUse.TRAINING,
                Outline.OVAL,
                lengthMm,
                widthMm,
                null,
                null,
                depthMm,
                lipMm,
                "stoneware",
                2.5);
    }

    /** Pine bark: Int. J. Agronomy 2012, 978528, table 1. */
    public static NewStockSubstrate bark() {
        return new NewStockSubstrate(name("Pine bark"), 0.18, null, 48.0, null, 31.0, null, 50.0);
    }

    public static NewStockSubstrate unknown() {
        return new NewStockSubstrate(name("Fired clay"), null, null, null, null, null, null, null);
    }

    public static NewStockMix mix(Map<Long, Double> parts) {
        var byId = new LinkedHashMap<String, Double>();
        parts.forEach((id, count) -> byId.put("" + id, count));
        return new NewStockMix(name("Mix"), byId);
    }

    /** A thickness that no other test asks for. */
    public static NewStockWire wire() {
        return new NewStockWire(WireMetal.ALUMINIUM, 10 + NUMBER.incrementAndGet() / 1000.0);
    }

    public static NewStockTool tool() {
        return new NewStockTool(name("Root saw"));
    }

    public static NewStockSupply supply() {
        return new NewStockSupply(name("Wound paste"), "ml");
    }

    static NewMovement came(double amount, java.time.LocalDate on) {
        return new NewMovement(MovementKind.RECEIVED, amount, on, null);
    }

    static NewMovement went(double amount, java.time.LocalDate on) {
        return new NewMovement(MovementKind.TAKEN, amount, on, null);
    }

    static NewMovement counted(double amount, java.time.LocalDate on, @Nullable String note) {
        return new NewMovement(MovementKind.COUNTED, amount, on, note);
    }
}
