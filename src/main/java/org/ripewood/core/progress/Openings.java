package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/**
 * How every technique stands for one tree on one day, and when each could be done.
 *
 * <p>An opening is worked out when it is first asked for and kept, since several techniques wait
 * for the same one; so an object of this class is for one thread.
 */
public final class Openings {

    private final EvaluationContext moment;
    private final CompiledTechnique[] techniques;
    private final Map<String, Integer> positions;
    private final List<Standing> standings;
    private final List<StageStanding> stages;
    private final ReasonOutlooks outlooks;
    private final @Nullable Opening[] known;

    Openings(
            EvaluationContext moment,
            CompiledTechnique[] techniques,
            Map<String, Integer> positions,
            List<Standing> standings,
            List<StageStanding> stages) {
        this.moment = moment;
        this.techniques = techniques;
        this.positions = positions;
        this.standings = List.copyOf(standings);
        this.stages = List.copyOf(stages);
        this.outlooks = new ReasonOutlooks(moment);
        this.known = new Opening[techniques.length];
    }

    /** The standings of all techniques, in telling order. */
    public List<Standing> standings() {
        return standings;
    }

    /** How far the tree is through each stage, the first stage first. */
    public List<StageStanding> stages() {
        return stages;
    }

    /**
     * When a technique could be done; empty when it is done or not needed.
     *
     * @throws IllegalArgumentException when the technique is not in the rulebook
     */
    public Optional<Opening> of(String technique) {
        var position = positions.get(technique);
        if (position == null) {
            throw new IllegalArgumentException("no technique " + technique + " in the rulebook");
        }
        return settled(standings.get(position)) ? Optional.empty() : Optional.of(at(position));
    }

    /**
     * The first days of open windows of a technique on or after the days of something else, such as
     * of one of its reasons; unsaid when none is in sight.
     *
     * @throws IllegalArgumentException when the technique is not in the rulebook
     */
    public Outlook inSeason(String technique, Outlook.Expected from) {
        var position = positions.get(technique);
        if (position == null) {
            throw new IllegalArgumentException("no technique " + technique + " in the rulebook");
        }
        return DaysAhead.of(from, moment.on)
                .toOpen(techniques[position].season(), moment.stagesAhead)
                .outlook(moment.on);
    }

    /** The openings of all techniques that are neither done nor unneeded, in telling order. */
    public List<Opening> all() {
        var all = new ArrayList<Opening>(standings.size());
        for (int position = 0; position < techniques.length; position++) {
            if (!settled(standings.get(position))) {
                all.add(at(position));
            }
        }
        return List.copyOf(all);
    }

    /**
     * A technique in the days ahead.
     *
     * @param clear when all but season and skill will have come about, in days from the first; null
     *     when that cannot be said
     * @param open the days on which the season is open by the leaves
     */
    record Ahead(String technique, @Nullable DaysAhead clear, BitSet open) {}

    /**
     * Every technique neither done nor unneeded in the days from one on, in telling order.
     *
     * @param from not before the day asked for
     */
    List<Ahead> ahead(LocalDate from, int days) {
        int first = (int) ChronoUnit.DAYS.between(moment.on, from);
        var ahead = new ArrayList<Ahead>();
        for (int position = 0; position < techniques.length; position++) {
            if (!settled(standings.get(position))) {
                var season = techniques[position].season();
                var clear = clear(at(position));
                ahead.add(
                        new Ahead(
                                standings.get(position).technique(),
                                clear == null ? null : clear.since(first),
                                season.openDays(moment.stagesAhead, first, days)));
            }
        }
        return ahead;
    }

    /** The latest of all waits but for season and skill; null when one of them is unsaid. */
    private @Nullable DaysAhead clear(Opening opening) {
        var latest = DaysAhead.NOW;
        for (var wait : opening.waits()) {
            if (wait.reason() instanceof Reason.OfSeason
                    || wait.reason() instanceof Reason.OfSkill) {
                continue;
            }
            if (wait.outlook() instanceof Outlook.Unsaid) {
                return null;
            }
            if (wait.outlook() instanceof Outlook.Expected expected) {
                latest = latest.orLater(DaysAhead.of(expected, moment.on));
            }
        }
        return latest;
    }

    private static boolean settled(Standing standing) {
        return standing.verdict() == Verdict.DONE || standing.verdict() == Verdict.NOT_NEEDED;
    }

    private Opening at(int position) {
        var opening = known[position];
        if (opening == null) {
            opening = open(position);
            known[position] = opening;
        }
        return opening;
    }

    private Opening open(int position) {
        var standing = standings.get(position);
        var season = techniques[position].season();
        var waits = new ArrayList<Opening.Wait>();
        for (var reason : standing.against()) {
            waits.add(waitFor(reason, season));
        }
        var outlook =
                standing.verdict() == Verdict.READY
                        ? new Outlook.Already()
                        : combined(waits, season);
        return new Opening(standing.technique(), moment.on, waits, outlook);
    }

    private Opening.Wait waitFor(Reason reason, CompiledSeason season) {
        if (reason instanceof Reason.OfOrder order) {
            return waitFor(reason, order.technique());
        }
        if (reason instanceof Reason.OfDevelopment development) {
            return waitFor(reason, development.technique());
        }
        return new Opening.Wait(reason, outlooks.of(reason, season), null);
    }

    /** A wait for a technique to be done first. */
    private Opening.Wait waitFor(Reason reason, String technique) {
        var before = of(technique).orElse(null);
        return new Opening.Wait(reason, ReasonOutlooks.first(technique, before), before);
    }

    /** The latest of the waits; then the first day from there on which the season is open. */
    private Outlook combined(List<Opening.Wait> waits, CompiledSeason season) {
        var unsaid = new LinkedHashSet<String>();
        var latest = DaysAhead.NOW;
        for (var wait : waits) {
            if (wait.outlook() instanceof Outlook.Unsaid because) {
                unsaid.add(because.because());
            } else if (wait.outlook() instanceof Outlook.Expected expected) {
                latest = latest.orLater(DaysAhead.of(expected, moment.on));
            }
        }
        return unsaid.isEmpty()
                ? latest.toOpen(season, moment.stagesAhead).outlook(moment.on)
                : new Outlook.Unsaid(String.join(" ", unsaid));
    }
}
