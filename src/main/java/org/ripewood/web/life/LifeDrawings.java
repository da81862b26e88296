package org.ripewood.web.life;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ripewood.life.Life;
import org.ripewood.life.LifeEntry;
import org.ripewood.life.LifeEntry.Kind;
import org.ripewood.pictures.LifePicture;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.Units;
import org.ripewood.trees.Tree;

/**
 * A tree's life drawn for a screen of middle width and for a wide one; a phone has the list by year
 * instead.
 */
record LifeDrawings(Picture middle, Picture wide) {

    private static final Sheet WIDE = new Sheet(1100, false, Units.METRIC);

    /** Some days are left before the first day, so that nothing sits on the edge. */
    private static final int DAYS_BEFORE = 20;

    static LifeDrawings of(Tree tree, Life life) {
        var drawing = drawing(tree, life);
        return new LifeDrawings(LifePicture.of(drawing, Sheet.PAGE), LifePicture.of(drawing, WIDE));
    }

    private static LifePicture.Drawing drawing(Tree tree, Life life) {
        var oldestFirst =
                Stream.concat(life.before().stream(), life.entries().stream())
                        .sorted(Comparator.comparing(LifeEntry::on))
                        .toList();
        var latest = life.until() == life.on().getYear();
        var until = latest ? life.on() : LocalDate.of(life.until(), Month.DECEMBER, 31);
        return new LifePicture.Drawing(
                tree.label(),
                first(life, until),
                until,
                latest && !tree.left() ? life.on() : null,
                since(oldestFirst, Kind.STAGE),
                since(oldestFirst, Kind.CONTAINER),
                steps(oldestFirst),
                of(oldestFirst, Kind.PHOTO).map(LifeEntry::on).toList(),
                wounds(oldestFirst),
                of(oldestFirst, Kind.TRUNK).flatMap(LifeDrawings::width).toList(),
                latest ? ahead(life) : List.of());
    }

    /** Years in which nothing happened yet are not drawn. */
    private static LocalDate first(Life life, LocalDate until) {
        if (!life.before().isEmpty() || life.entries().isEmpty()) {
            return LocalDate.of(life.from(), Month.JANUARY, 1);
        }
        var first = life.entries().get(life.entries().size() - 1).on();
        return first.isAfter(until) ? until : first.minusDays(DAYS_BEFORE);
    }

    private static Stream<LifeEntry> of(List<LifeEntry> entries, Kind kind) {
        return entries.stream().filter(entry -> entry.kind() == kind);
    }

    private static List<LifePicture.Since> since(List<LifeEntry> entries, Kind kind) {
        return of(entries, kind)
                .map(
                        entry ->
                                new LifePicture.Since(
                                        entry.on(),
                                        kind == Kind.CONTAINER && !entry.detail().isEmpty()
                                                ? entry.title() + ": " + entry.detail()
                                                : entry.title()))
                .toList();
    }

    private static List<LifePicture.Dot> steps(List<LifeEntry> entries) {
        return entries.stream()
                .filter(entry -> entry.kind() == Kind.STEP || entry.kind() == Kind.WORK)
                .map(entry -> new LifePicture.Dot(entry.on(), entry.title(), entry.signedOff()))
                .toList();
    }

    private static List<LifePicture.Wedge> wounds(List<LifeEntry> entries) {
        var byWound =
                of(entries, Kind.WOUND)
                        .filter(entry -> entry.mm() != null && entry.id() != null)
                        .collect(
                                Collectors.groupingBy(
                                        LifeEntry::id, LinkedHashMap::new, Collectors.toList()));
        return byWound.values().stream()
                .map(
                        looks ->
                                new LifePicture.Wedge(
                                        looks.get(0).title(),
                                        looks.stream().flatMap(LifeDrawings::width).toList()))
                .toList();
    }

    private static Stream<LifePicture.Width> width(LifeEntry entry) {
        var mm = entry.mm();
        return mm == null ? Stream.empty() : Stream.of(new LifePicture.Width(entry.on(), mm));
    }

    private static List<LifePicture.Ahead> ahead(Life life) {
        var ahead = new ArrayList<LifePicture.Ahead>();
        life.ahead()
                .forEach(
                        one ->
                                ahead.add(
                                        new LifePicture.Ahead(
                                                one.title(), one.when().outlook(), false)));
        var goal = life.goal();
        if (goal != null) {
            ahead.add(new LifePicture.Ahead(goal.title(), goal.when().outlook(), true));
        }
        return ahead;
    }
}
