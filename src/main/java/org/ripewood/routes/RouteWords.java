package org.ripewood.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.route.Cause;
import org.ripewood.core.route.Route;
import org.ripewood.course.Content;
import org.ripewood.standing.OpeningText;
import org.ripewood.standing.OpeningView;
import org.ripewood.standing.ReasonText;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.Wording;

/** What a step on the way waits for, in the titles of the content. */
final class RouteWords {

    static final String SEASON = "the right growth stage";

    private static final String NEEDED = "needed";

    /** A headline is read at a glance; everything stands below it. */
    private static final int MOST_NAMED = 3;

    private final Content content;

    /** By technique and key of the reason. */
    private final Map<String, Map<String, OpeningView.Wait>> waits;

    RouteWords(TreeOnDay tree) {
        content = tree.content();
        var teller =
                new OpeningText(
                        content, new ReasonText(content, tree.subject().traits()), tree.open());
        waits =
                tree.openings().all().stream()
                        .collect(
                                Collectors.toMap(
                                        Opening::technique,
                                        opening ->
                                                teller.tell(opening).waits().stream()
                                                        .collect(
                                                                Collectors.toMap(
                                                                        OpeningView.Wait::key,
                                                                        Function.identity()))));
    }

    String titleOf(String technique) {
        return content.titleOf(technique);
    }

    /** What decides a step's day; empty for nothing. */
    String decider(String technique, Route.Decider decider) {
        return switch (decider.cause()) {
            case NOTHING -> "";
            case WAIT -> thing(technique, decider.what());
            case SEASON -> SEASON;
            default -> ofOther(decider.cause(), decider.what());
        };
    }

    /** What time goes by for. */
    String waiting(Route.Waiting waiting) {
        return switch (waiting.cause()) {
            case WAIT -> thing("", waiting.what());
            case NOTHING, SEASON -> SEASON + " for " + quoted(waiting.what(), "what comes next");
            default -> ofOther(waiting.cause(), waiting.what());
        };
    }

    private String ofOther(Cause cause, String what) {
        var work = quoted(what, "earlier work");
        return switch (cause) {
            case ORDER -> work + " to be done first";
            case LAG -> thing("", what);
            case HEAVY -> "another growing season, after " + work;
            case QUIET -> "quiet time after " + work;
            case LOAD -> "recovery from " + work;
            case DOSE -> "another growing season's share of foliage or roots, after " + work;
            case NOTHING, WAIT, SEASON ->
                    throw new IllegalStateException("no other step: " + cause);
        };
    }

    private String quoted(String technique, String otherwise) {
        return technique.isEmpty() ? otherwise : "“%s”".formatted(titleOf(technique));
    }

    /** A fact, or what else is waited for, by its title. */
    private String thing(String technique, String what) {
        var fact = Fact.find(what);
        if (fact.isPresent()) {
            return content.text(fact.get()).title();
        }
        return find(technique, what)
                .map(OpeningView.Wait::title)
                .orElseGet(
                        () ->
                                switch (what) {
                                    case "skill" -> "a skill to be shown";
                                    case "needed" -> "whether the tree needs it";
                                    case "load" -> "recovery from earlier work";
                                    default -> "time between turns";
                                });
    }

    /** What was taken for granted. */
    String unsaid(Route.Unsaid unsaid) {
        return find(unsaid.code(), unsaid.key())
                .map(OpeningView.Wait::title)
                .orElseGet(() -> thing(unsaid.code(), unsaid.fact()));
    }

    /** {@code "“Pests and disease”, “Front” and 3 more things turn out well"}. */
    String turnOutWell(List<Route.Unsaid> unsaid) {
        var things = unsaid.stream().map(this::inSentence).distinct().toList();
        int more = things.size() - MOST_NAMED;
        var named = new ArrayList<>(things.subList(0, Math.min(things.size(), MOST_NAMED)));
        if (more > 0) {
            named.add(Wording.counted(more, "more thing"));
        }
        return Wording.list(named, "and") + (things.size() == 1 ? " turns" : " turn") + " out well";
    }

    /** Why there is no day, and which other ways there are. */
    String standsStill(List<Route.Unsaid> unsaid) {
        var things = unsaid.stream().map(this::inSentence).distinct().toList();
        return "No date: %s %s still, and nobody can say when what waits for %s may begin. Ask your"
                        .formatted(
                                Wording.list(things, "and"),
                                things.size() == 1 ? "stands" : "stand",
                                things.size() == 1 ? "it" : "them")
                + " instructor whether the place becomes deadwood by design, or is covered by a"
                + " graft.";
    }

    private String inSentence(Route.Unsaid unsaid) {
        return unsaid.key().equals(NEEDED)
                ? "the need of “%s”".formatted(titleOf(unsaid.code()))
                : "“%s”".formatted(unsaid(unsaid));
    }

    /** Why it had to be. */
    String because(Route.Unsaid unsaid) {
        return find(unsaid.code(), unsaid.key())
                .map(OpeningView.Wait::sentence)
                .orElse(unsaid.because());
    }

    private Optional<OpeningView.Wait> find(String technique, String key) {
        return Optional.ofNullable(waits.getOrDefault(technique, Map.of()).get(key));
    }
}
