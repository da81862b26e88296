package org.ripewood.routes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ripewood.core.route.Cause;
import org.ripewood.core.route.Route;
import org.ripewood.core.route.Wait;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.SeasonOfYear;
import org.ripewood.course.Content;
import org.ripewood.course.Stage;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.Wording;

/** Puts a route into the titles and words of the content. */
final class RouteText {

    private final TreeOnDay tree;
    private final Content content;
    private final RouteWords words;
    private final double latitude;

    RouteText(TreeOnDay tree) {
        this.tree = tree;
        this.content = tree.content();
        this.words = new RouteWords(tree);
        this.latitude = tree.state().site().latitude();
    }

    RouteView tell(Route route, Stage goal) {
        return new RouteView(
                tree.tree().id(),
                tree.on(),
                content.revision(),
                goal.code(),
                goal.title(),
                latitude,
                reached(route, goal),
                steps(route),
                chain(route),
                route.waitings().stream().map(this::waiting).toList(),
                assumed(takenForGranted(route)),
                route.draws());
    }

    /** Whatever is taken for granted stands first, since nothing of it is a promise. */
    private RouteView.When reached(Route route, Stage goal) {
        if (!content.species().containsKey(tree.tree().species())) {
            return when(unknownKind(), "", false);
        }
        if (route.goal() instanceof Outlook.Already) {
            return new RouteView.When(
                    true,
                    null,
                    null,
                    null,
                    already(route, goal),
                    false,
                    RouteView.When.Seasons.NONE);
        }
        var before = "this tree could finish “%s”".formatted(goal.title());
        if (route.goal() instanceof Outlook.Unsaid && !standing(route).isEmpty()) {
            return when(new Outlook.Unsaid(words.standsStill(standing(route))), "", false);
        }
        var unsaid = restsOn(route);
        return unsaid.isEmpty()
                ? when(route.goal(), capital(before), false)
                : when(
                        route.goal(),
                        "If %s, %s".formatted(words.turnOutWell(unsaid), before),
                        true);
    }

    /** Of a kind without rules nothing is left to do, which says nothing. */
    private Outlook unknownKind() {
        return new Outlook.Unsaid(
                "No way can be worked out: %s."
                        .formatted(content.kindOf(tree.tree().species()).common()));
    }

    private String already(Route route, Stage goal) {
        var unsaid = restsOn(route);
        return unsaid.isEmpty()
                ? "Nothing is left to do up to “%s”; the tree has reached it."
                        .formatted(goal.title())
                : "If %s, nothing is left to do up to “%s”."
                        .formatted(words.turnOutWell(unsaid), goal.title());
    }

    /** What keeps the goal from having a day: it stands still, and nobody guesses. */
    private static List<Route.Unsaid> standing(Route route) {
        return route.unsaid().stream()
                .filter(unsaid -> unsaid.assumption() == Wait.Assumption.NEVER_MET)
                .toList();
    }

    private static List<Route.Unsaid> takenForGranted(Route route) {
        return route.unsaid().stream()
                .filter(unsaid -> unsaid.assumption() != Wait.Assumption.NEVER_MET)
                .toList();
    }

    /** What the goal hangs on of what was taken for granted, that of the usual chain first. */
    private static List<Route.Unsaid> restsOn(Route route) {
        var onChain = route.chain().stream().map(Route.Link::code).collect(Collectors.toSet());
        return takenForGranted(route).stream()
                .sorted(Comparator.comparing(unsaid -> !onChain.contains(unsaid.code())))
                .toList();
    }

    private RouteView.When when(Outlook outlook, String before, boolean assumed) {
        if (outlook instanceof Outlook.Expected expected) {
            var told =
                    assumed
                            ? SeasonOfYear.toldWithCare(expected, latitude)
                            : SeasonOfYear.told(expected, latitude);
            return new RouteView.When(
                    false,
                    expected.earliest(),
                    expected.likely(),
                    expected.latest(),
                    before + " " + told + ".",
                    assumed,
                    RouteView.When.Seasons.of(expected, latitude));
        }
        var because = outlook instanceof Outlook.Unsaid unsaid ? unsaid.because() : "";
        return new RouteView.When(
                false, null, null, null, because, assumed, RouteView.When.Seasons.NONE);
    }

    private List<RouteView.Step> steps(Route route) {
        var onChain = route.chain().stream().map(Route.Link::code).collect(Collectors.toSet());
        return route.steps().stream()
                .map(step -> step(route, step, onChain.contains(step.code())))
                .toList();
    }

    private RouteView.Step step(Route route, Route.Step step, boolean onChain) {
        var technique = content.technique(step.code());
        boolean still = step.when() instanceof Outlook.Unsaid && !standing(route).isEmpty();
        var outlook = still ? new Outlook.Unsaid(words.standsStill(standing(route))) : step.when();
        var when = when(outlook, "Expected", step.assumed());
        var likely = when.likely();
        var seasons =
                step.shareBySeason().entrySet().stream()
                        .map(
                                entry ->
                                        new RouteView.Season(
                                                name(entry.getKey()),
                                                entry.getKey(),
                                                rounded(entry.getValue())))
                        .toList();
        return new RouteView.Step(
                step.code(),
                technique.title(),
                technique.stage(),
                stageTitle(technique.stage()),
                when,
                likely == null ? null : name(GrowingSeason.of(likely, latitude).firstDay()),
                seasons,
                rounded(step.onChain()),
                onChain,
                waitsFor(step, step.decider()),
                step.assumed());
    }

    private List<RouteView.Link> chain(Route route) {
        return route.chain().stream()
                .map(
                        link ->
                                new RouteView.Link(
                                        link.code(),
                                        words.titleOf(link.code()),
                                        route.find(link.code())
                                                .map(step -> waitsFor(step, link.decider()))
                                                .orElse("")))
                .toList();
    }

    /** Where nothing else puts a step off, its season has. */
    private String waitsFor(Route.Step step, Route.Decider decider) {
        boolean putOff =
                step.when() instanceof Outlook.Expected expected
                        && expected.likely().isAfter(tree.on());
        return decider.cause() == Cause.NOTHING && putOff
                ? RouteWords.SEASON
                : words.decider(step.code(), decider);
    }

    /** A thousand draws tell no more than a thousandth. */
    private static double rounded(double share) {
        return Math.round(share * 1_000) / 1_000.0;
    }

    private String stageTitle(String code) {
        return content.stages().stream()
                .filter(stage -> stage.code().equals(code))
                .map(Stage::title)
                .findFirst()
                .orElse(code);
    }

    /** A year north of the equator; south of it a season lies in two. */
    private static String name(LocalDate firstDay) {
        int year = firstDay.getYear();
        return firstDay.getDayOfYear() == 1
                ? String.valueOf(year)
                : "%d/%02d".formatted(year, (year + 1) % 100);
    }

    private RouteView.Waiting waiting(Route.Waiting waiting) {
        var what = words.waiting(waiting);
        long days = Math.round(waiting.meanDays());
        return new RouteView.Waiting(
                what,
                days,
                rounded(waiting.share()),
                "%s: %s, %s of the time."
                        .formatted(
                                capital(what),
                                Wording.span(days),
                                Wording.percent(waiting.share())));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ENGLISH) + words.substring(1);
    }

    private record Thing(String what, Wait.Assumption assumption) {}

    /** What many steps take for granted is told once. */
    private List<RouteView.Assumed> assumed(List<Route.Unsaid> unsaid) {
        var byThing = new LinkedHashMap<Thing, List<Route.Unsaid>>();
        for (var one : unsaid) {
            byThing.computeIfAbsent(
                            new Thing(words.unsaid(one), one.assumption()),
                            any -> new ArrayList<>())
                    .add(one);
        }
        return byThing.entrySet().stream()
                .map(entry -> assumed(entry.getKey(), entry.getValue()))
                .toList();
    }

    private RouteView.Assumed assumed(Thing thing, List<Route.Unsaid> steps) {
        return new RouteView.Assumed(
                thing.what(),
                thing.assumption() == Wait.Assumption.MET_WHEN_LOOKED_AT,
                words.because(steps.get(0)),
                steps.stream().map(step -> words.titleOf(step.code())).distinct().toList());
    }
}
