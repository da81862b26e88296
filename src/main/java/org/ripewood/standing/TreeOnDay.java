package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.condition.TreeState;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Openings;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.StageStanding;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.course.Stage;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.Wording;
import org.ripewood.trees.Tree;

/**
 * A tree on a day with how everything stands for it, judged once by one content.
 *
 * @param openings of all techniques, with how they stand
 * @param open open steps by technique
 */
public record TreeOnDay(
        Content content,
        TreeState state,
        Subject subject,
        Openings openings,
        Map<String, StepBrief> open) {

    /** How every technique stands, in telling order. */
    public List<Standing> standings() {
        return openings.standings();
    }

    public Tree tree() {
        return state.tree();
    }

    public LocalDate on() {
        return state.on();
    }

    /** How a technique stands; empty when the content does not have it, or no longer. */
    public Optional<Standing> find(String technique) {
        return standings().stream()
                .filter(standing -> standing.technique().equals(technique))
                .findFirst();
    }

    /**
     * READY steps nobody has been given yet; care is no step. None while a tree may be dead:
     * whether it lives comes before every step.
     */
    public List<Standing> free() {
        if (AliveDoubt.of(this).isPresent()) {
            return List.of();
        }
        return steps(Verdict.READY)
                .filter(standing -> !open.containsKey(standing.technique()))
                .toList();
    }

    public List<Standing> with(Verdict verdict) {
        return standings().stream().filter(standing -> standing.verdict() == verdict).toList();
    }

    /** Those with a verdict that move the tree on; care, which only keeps it well, left out. */
    public Stream<Standing> steps(Verdict verdict) {
        return with(verdict).stream().filter(standing -> !isCare(standing));
    }

    /** Care that is READY: it may be given any time, and moves nothing on. */
    public List<Standing> careNow() {
        return with(Verdict.READY).stream().filter(this::isCare).toList();
    }

    /** How many techniques this tree still needs wait for another to be done first. */
    public int waitingFor(String technique) {
        return (int)
                standings().stream()
                        .filter(standing -> standing.verdict() != Verdict.DONE)
                        .filter(
                                standing ->
                                        standing.against().stream()
                                                .anyMatch(reason -> isTurn(reason, technique)))
                        .count();
    }

    private static boolean isTurn(Reason reason, String technique) {
        return (reason instanceof Reason.OfOrder order && order.technique().equals(technique))
                || (reason instanceof Reason.OfDevelopment first
                        && first.technique().equals(technique));
    }

    /** Whether it is care, which is no step. */
    public boolean isCare(Standing standing) {
        return content.technique(standing.technique()).rule().purpose()
                == TechniqueRule.Purpose.CARE;
    }

    /** The stage the tree is in: what an instructor said last, else what the rules tell. */
    public Stage stage() {
        var said = subject.facts().find(Fact.TRAINING_STAGE);
        return said != null && said.value() instanceof Value.Word word
                ? stage(word.word())
                : byRules();
    }

    private Stage byRules() {
        return stage(StageStanding.current(openings.stages()).stage());
    }

    private Stage stage(String code) {
        return content.stages().stream()
                .filter(stage -> stage.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /**
     * {@code "Stage 3: Build the structure, since 14 March 2026"}; the day only where one said it.
     */
    public String stageInWords() {
        var stage = stage();
        var said = subject.facts().find(Fact.TRAINING_STAGE);
        return "Stage %d: %s%s"
                .formatted(
                        stage.order(),
                        stage.title(),
                        said == null ? "" : ", since " + Wording.day(said.observedOn()));
    }

    /** The stage the tree is in, and what is missing for the next. */
    public StageView tellStage() {
        var stage = stage();
        var byRules = byRules();
        var said = subject.facts().find(Fact.TRAINING_STAGE);
        var upTo = openings.stages().subList(0, stage.order());
        var teller = teller();
        return new StageView(
                stage.code(),
                stage.title(),
                stage.order(),
                stage.aim(),
                said == null ? null : said.observedOn(),
                byRules.code(),
                byRules.title(),
                upTo.stream()
                        .flatMap(standing -> standing.missing().stream())
                        .map(reason -> teller.tell(reason, stage.title()))
                        .distinct()
                        .toList(),
                upTo.get(upTo.size() - 1).howFar());
    }

    public TechniqueStanding tell(Standing standing) {
        var technique = content.technique(standing.technique());
        var step = open.get(standing.technique());
        var opening = opening(standing);
        return new TechniqueStanding(
                standing.technique(),
                technique.title(),
                technique.stage(),
                standing.verdict(),
                standing.howFar(),
                opensOn(standing),
                opening,
                reasons(standing, opening),
                step == null ? null : step.id());
    }

    /** When it could be done, in words; null when it is done or not needed. */
    public @Nullable OpeningView opening(Standing standing) {
        return openings.of(standing.technique())
                .map(opening -> new OpeningText(content, teller(), open).tell(opening))
                .orElse(null);
    }

    private List<ReasonView> reasons(Standing standing, @Nullable OpeningView opening) {
        var told = teller().tell(standing);
        if (opening == null) {
            return told;
        }
        var outlooks =
                opening.waits().stream()
                        .collect(
                                Collectors.toMap(
                                        OpeningView.Wait::key, OpeningView.Wait::sentence));
        return told.stream()
                .map(
                        reason -> {
                            var outlook = outlooks.get(reason.key());
                            return outlook == null ? reason : reason.withOutlook(outlook);
                        })
                .toList();
    }

    private ReasonText teller() {
        return new ReasonText(content, subject.traits());
    }

    private static @Nullable LocalDate opensOn(Standing standing) {
        var season = seasonOf(standing);
        return season == null ? null : season.opensOn();
    }

    /** Whether its window is not known to be shut. */
    public static boolean inSeason(Standing standing) {
        return !standing.outOfSeason();
    }

    /** Its season among the reasons; null for a verdict that did not come to ask for it. */
    static Reason.@Nullable OfSeason seasonOf(Standing standing) {
        for (var reason : standing.reasons()) {
            if (reason instanceof Reason.OfSeason season) {
                return season;
            }
        }
        return null;
    }
}
