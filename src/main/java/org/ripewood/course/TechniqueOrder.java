package org.ripewood.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.traverse.TopologicalOrderIterator;

/** What comes after what, as a graph: an edge runs from what comes first to what waits for it. */
final class TechniqueOrder {

    private final Graph<String, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
    private final Map<String, Part> techniques = new TreeMap<>();

    private TechniqueOrder() {}

    /** Takes in every technique; what {@code after} names without there being such is left out. */
    static TechniqueOrder of(ContentDocuments shelf) {
        var order = new TechniqueOrder();
        shelf.all(ContentKind.TECHNIQUE)
                .forEach(
                        (code, document) -> {
                            order.techniques.put(code, document.top());
                            order.graph.addVertex(code);
                        });
        order.techniques.forEach(
                (code, technique) ->
                        technique.texts("after").stream()
                                .filter(order.graph::containsVertex)
                                .forEach(before -> order.graph.addEdge(before, code)));
        return order;
    }

    /** Names every technique on a circle, in the order in which they wait for each other. */
    void refuseCircles(Faults faults) {
        for (var knot :
                new KosarajuStrongConnectivityInspector<>(graph).getStronglyConnectedComponents()) {
            for (var start : new TreeSet<>(knot.vertexSet())) {
                var circle = circle(knot, start);
                if (!circle.isEmpty()) {
                    tell(circle, faults);
                    break;
                }
            }
        }
    }

    /** The shortest way from a technique through what it waits for back to itself. */
    private static List<String> circle(Graph<String, DefaultEdge> knot, String start) {
        return new TreeSet<>(knot.incomingEdgesOf(start).stream().map(knot::getEdgeSource).toList())
                .stream()
                        .map(before -> BFSShortestPath.findPathBetween(knot, start, before))
                        .map(path -> path.getVertexList())
                        .min(Comparator.comparingInt(List::size))
                        .map(TechniqueOrder::backwards)
                        .orElse(List.of());
    }

    /** From first-comes-first to who-waits-for-whom, with the start at both ends. */
    private static List<String> backwards(List<String> path) {
        var circle = new ArrayList<String>();
        circle.add(path.get(0));
        for (int i = path.size() - 1; i >= 0; i--) {
            circle.add(path.get(i));
        }
        return circle;
    }

    private void tell(List<String> circle, Faults faults) {
        var technique = techniques.get(circle.get(0));
        if (technique == null) {
            throw new IllegalStateException("no technique " + circle.get(0));
        }
        var at =
                technique.each("after").stream()
                        .filter(before -> circle.get(1).equals(before.text()))
                        .findFirst()
                        .orElse(technique.at("after"));
        faults.add(
                at,
                "a circle: " + String.join(" after ", circle),
                "an order in which every technique can be reached");
    }

    /** Stage by stage as far as what comes first allows; within a stage by code. */
    List<String> tellingOrder(Map<String, Integer> stageOrders) {
        var byStage =
                Comparator.<String>comparingInt(code -> stageOrder(code, stageOrders))
                        .thenComparing(Comparator.naturalOrder());
        var ordered = new ArrayList<String>();
        new TopologicalOrderIterator<>(graph, byStage).forEachRemaining(ordered::add);
        return ordered;
    }

    private int stageOrder(String code, Map<String, Integer> stageOrders) {
        var technique = techniques.get(code);
        var stage = technique == null ? null : technique.text("stage");
        return stageOrders.getOrDefault(String.valueOf(stage), 0);
    }
}
