package org.ripewood.core.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.core.season.Outlook;

/** What one draw says of all waits and lags; used again for the next draw. */
final class RandomDraw {

    /** All waits of all turns, those of one turn together. */
    final List<Wait> waits = new ArrayList<>();

    private final int[] firstWait;
    private final int[] waitName;
    private final OutlookCurve[] curves;
    private final int[] assumedDay;
    private final Map<String, Integer> names = new LinkedHashMap<>();
    private final long[] streams;
    private final double[] uniform;
    private final double[] normal;
    private final boolean[] ofLag;

    /** What years and people are like. */
    final YearsOfDraw years;

    RandomDraw(PrecedenceGraph network, YearsAhead terrain, Spread spread, long seed) {
        years = new YearsOfDraw(network, terrain, spread, seed);
        firstWait = new int[network.turns.size() + 1];
        for (int i = 0; i < network.turns.size(); i++) {
            waits.addAll(network.turns.get(i).waits());
            firstWait[i + 1] = waits.size();
        }
        waitName = waits.stream().mapToInt(wait -> name(wait.fact())).toArray();
        curves = curves(terrain);
        assumedDay =
                waits.stream().mapToInt(wait -> assumedDay(wait.ifUnsaid(), terrain)).toArray();
        for (var arrow : network.arrows) {
            if (arrow.lag() != null) {
                name(arrow.lag().key());
            }
        }
        streams = names.keySet().stream().mapToLong(name -> Chance.stream(seed, name)).toArray();
        uniform = new double[streams.length];
        normal = new double[streams.length];
        ofLag = new boolean[streams.length];
        for (var arrow : network.arrows) {
            if (arrow.lag() != null) {
                ofLag[name(arrow.lag().key())] = true;
            }
        }
    }

    private static int assumedDay(Wait.Assumption assumption, YearsAhead terrain) {
        return switch (assumption) {
            case MET_WHEN_LOOKED_AT -> 0;
            case MET_NEXT_SEASON -> terrain.seasonAfter(0);
            case NEVER_MET -> YearsAhead.NEVER;
        };
    }

    private OutlookCurve[] curves(YearsAhead terrain) {
        var known = new HashMap<Outlook, OutlookCurve>();
        return waits.stream()
                .map(
                        wait ->
                                known.computeIfAbsent(
                                        wait.outlook(),
                                        outlook -> OutlookCurve.of(outlook, terrain.first)))
                .toArray(OutlookCurve[]::new);
    }

    /** The place of a name, given on first sight. */
    int name(String name) {
        var known = names.putIfAbsent(name, names.size());
        return known == null ? names.size() - 1 : known;
    }

    /** Draws anew. */
    void next(int draw) {
        years.next(draw);
        for (int i = 0; i < streams.length; i++) {
            uniform[i] = Chance.uniform(streams[i], draw);
            normal[i] = ofLag[i] ? Chance.normal(uniform[i]) : 0;
        }
    }

    int firstWait(int turn) {
        return firstWait[turn];
    }

    /** The day a wait is over in this draw, from the route's first day, or never. */
    int day(int wait) {
        return waits.get(wait).assumed()
                ? assumedDay[wait]
                : curves[wait].at(uniform[waitName[wait]]);
    }

    /** How long a lag lasts in this draw. */
    int days(Lag lag) {
        return lag.days(normal[name(lag.key())]);
    }
}
