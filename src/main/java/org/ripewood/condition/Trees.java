package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Work;
import org.ripewood.core.season.Habit;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchBook;
import org.ripewood.records.ContainerBook;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.LastReadings;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewSeries;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observation;
import org.ripewood.records.ObservationBook;
import org.ripewood.records.SeriesBook;
import org.ripewood.records.SeriesOutcome;
import org.ripewood.records.WorkBook;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.records.WoundBook;
import org.ripewood.sites.KnownSite;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.ReadingsBook;
import org.ripewood.sites.ReadingsImport;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;
import org.ripewood.sites.SiteSeason;
import org.ripewood.sites.Sites;
import org.ripewood.trees.Departure;
import org.ripewood.trees.DepartureBook;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.FormerKeepers;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOverBook;
import org.ripewood.trees.NewDeparture;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Reach;
import org.ripewood.trees.SiteDesk;
import org.ripewood.trees.SiteReach;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeBook;
import org.ripewood.trees.TreeHandedOver;
import org.ripewood.trees.TreeLeft;
import org.ripewood.trees.WordsBook;

/** Trees and their record; nothing in it is overwritten. */
@ApplicationScoped
public class Trees {

    private final Sites sites;
    private final SiteDesk siteDesk;
    private final SiteReach siteReach;
    private final ReadingsBook readings;
    private final TreeBook trees;
    private final ObservationBook observations;
    private final SeriesBook series;
    private final WoundBook wounds;
    private final BranchBook branches;
    private final ContainerBook containers;
    private final WorkBook works;
    private final States states;
    private final Reach reach;
    private final HandOverBook handOvers;
    private final DepartureBook departures;
    private final FormerKeepers formerKeepers;
    private final WordsBook words;

    Trees(
            Sites sites,
            SiteDesk siteDesk,
            SiteReach siteReach,
            ReadingsBook readings,
            TreeBook trees,
            ObservationBook observations,
            SeriesBook series,
            WoundBook wounds,
            BranchBook branches,
            ContainerBook containers,
            WorkBook works,
            States states,
            Reach reach,
            HandOverBook handOvers,
            DepartureBook departures,
            FormerKeepers formerKeepers,
            WordsBook words) {
        this.sites = sites;
        this.siteDesk = siteDesk;
        this.siteReach = siteReach;
        this.readings = readings;
        this.trees = trees;
        this.observations = observations;
        this.series = series;
        this.wounds = wounds;
        this.branches = branches;
        this.containers = containers;
        this.works = works;
        this.states = states;
        this.reach = reach;
        this.handOvers = handOvers;
        this.departures = departures;
        this.formerKeepers = formerKeepers;
        this.words = words;
    }

    /** Enters a site; instructors and registrars only. */
    @Transactional
    public Site enterSite(Actor actor, NewSite site) {
        return sites.enter(actor, site);
    }

    /**
     * Changes name, place and monthly means of a site within reach: by who entered it, an
     * instructor of most whose trees stand there, or a registrar. 412 when the version is not the
     * current one.
     */
    @Transactional
    public KnownSite changeSite(Actor actor, long siteId, long version, NewSite site) {
        siteReach.requireToChange(actor, siteId, "change it");
        return siteDesk.known(sites.change(siteId, version, site));
    }

    /** Whether the actor may change a site within their reach, and bring in readings. */
    @Transactional
    public boolean keepsSite(Actor actor, long siteId) {
        siteReach.require(actor, siteId);
        return siteReach.mayChange(actor, siteId);
    }

    /** A site within reach and what is known of it; 404 otherwise. */
    @Transactional
    public KnownSite site(Actor actor, long siteId) {
        siteReach.require(actor, siteId);
        return siteDesk.known(siteId);
    }

    /**
     * Keeps the daily readings in a text, for those who may {@link #changeSite change} the site.
     *
     * <p>Good lines are kept whatever the others are. A day that was imported before is read anew:
     * readings are measurements of the site and not part of any tree's record.
     *
     * @param text a line a day with date, tmin and tmax in °C, or GHCN-Daily's layout by station
     */
    @Transactional
    public ReadingsImport importReadings(Actor actor, long siteId, String text) {
        siteReach.requireToChange(actor, siteId, "bring in its readings");
        return readings.take(siteId, text);
    }

    /**
     * A growing season at a site within reach, for trees nobody has looked at.
     *
     * @param year in which it begins; the present season when null
     */
    @Transactional
    public SiteSeason season(
            Actor actor, long siteId, Habit habit, double baseCelsius, @Nullable Integer year) {
        siteReach.require(actor, siteId);
        return siteDesk.season(siteId, habit, baseCelsius, year);
    }

    /** The present growing season of a species at a site within reach. */
    @Transactional
    public SiteSeason season(Actor actor, long siteId, String species) {
        siteReach.require(actor, siteId);
        return siteDesk.season(siteId, species);
    }

    /** All sites, by name; of those out of reach no more than the name. */
    @Transactional
    public List<SiteLine> sites(Actor actor) {
        return siteReach.lines(actor);
    }

    /** Enters a tree, at a site within reach. */
    @Transactional
    public Tree enter(Actor actor, NewTree tree) {
        return trees.enter(actor, tree);
    }

    /** Whether a tree is there and within reach. */
    @Transactional
    public boolean reaches(Actor actor, long treeId) {
        return reach.includes(actor, treeId);
    }

    /** A tree within reach; 404 otherwise. */
    @Transactional
    public Tree get(Actor actor, long treeId) {
        return words.told(actor, reach.tree(actor, treeId));
    }

    /** What was said of a tree within reach before somebody said something else. */
    @Transactional
    public List<EarlierWords> earlierWords(Actor actor, long treeId) {
        return words.earlier(actor, reach.tree(actor, treeId));
    }

    /**
     * Trees within reach by label; of one keeper when given, of the students of one course when
     * given. Those that left the school are not among them.
     */
    @Transactional
    public Paged<Tree> list(
            Actor actor, @Nullable Long keeperId, @Nullable Long courseId, PageRequest page) {
        return trees.list(actor, keeperId, courseId, false, page);
    }

    /** The same of trees that left the school. */
    @Transactional
    public Paged<Tree> left(
            Actor actor, @Nullable Long keeperId, @Nullable Long courseId, PageRequest page) {
        return trees.list(actor, keeperId, courseId, true, page);
    }

    /** What trees are called, by id, also those that left; one query, no reach is asked. */
    @Transactional
    public Map<Long, String> labels(Collection<Long> treeIds) {
        return trees.labels(treeIds);
    }

    /**
     * Goes on only when a tree is within reach (404) and has not left the school (409): whatever
     * writes of a tree asks this first.
     */
    @Transactional
    public void requireHere(Actor actor, long treeId) {
        reach.requireHere(actor, treeId);
    }

    /** The same of a tree that may be out of reach, of which nothing is said then. */
    @Transactional
    public void refuseLeft(Actor actor, long treeId) {
        if (reach.includes(actor, treeId)) {
            reach.requireHere(actor, treeId);
        }
    }

    /**
     * Trees at the school of these keepers, by id of tree, without what is said of them; no reach
     * is asked, callers have checked the course.
     */
    @Transactional
    public List<Tree> ofKeepers(Collection<Long> keeperIds) {
        return trees.ofKeepers(keeperIds);
    }

    /**
     * Changes label and site (to one within reach), and takes what is said anew of its origin and
     * in its note beside what was said before. Who does not read a former keeper's words leaves
     * them by saying nothing. 412 when the version is not the current one.
     */
    @Transactional
    public Tree change(Actor actor, long treeId, long version, NewTree tree) {
        return trees.change(actor, treeId, version, tree);
    }

    /**
     * Gives a tree within reach another keeper: somebody of the school who may sign in and shares a
     * course with the actor; anybody where a registrar does it. Steps under way stay as they are;
     * {@link TreeHandedOver} is told to other rooms. A tree that left the school is taken in again
     * this way, its last keeper included. 412 when the version is not the current one.
     */
    @Transactional
    public Tree handOver(Actor actor, long treeId, long version, HandOver to) {
        return handOvers.handOver(actor, treeId, version, to);
    }

    /**
     * Lets a tree within reach leave the school. Its record is closed from then on and stays to be
     * read; {@link TreeLeft} is told to other rooms. 409 when it left already, 412 when the version
     * is not the current one.
     */
    @Transactional
    public Tree leave(Actor actor, long treeId, long version, NewDeparture going) {
        return departures.leave(actor, treeId, version, going);
    }

    /** When a tree within reach left the school and how, the last time first. */
    @Transactional
    public List<Departure> departures(Actor actor, long treeId) {
        return departures.of(actor, treeId);
    }

    /** Whom the actor may hand a tree over to, by name. */
    @Transactional
    public List<Person> receivers(Actor actor, long treeId) {
        return handOvers.receivers(actor, treeId);
    }

    /**
     * Former keepers of a tree whom the actor does not reach: neither their names nor what they
     * wrote in their own words is for the actor.
     */
    @Transactional
    public Set<Long> hiddenKeepers(Actor actor, long treeId) {
        return formerKeepers.hidden(actor, reach.tree(actor, treeId));
    }

    /** Whoever kept these trees before, by tree; trees of one keeper only are absent. */
    @Transactional
    public Map<Long, Set<Long>> formerKeepers(Collection<Long> treeIds) {
        return formerKeepers.ofIds(treeIds);
    }

    /** Names on a tree's record, as the actor may read them. */
    @Transactional
    public Map<Long, String> names(Actor actor, long treeId, Collection<Long> personIds) {
        return formerKeepers.names(hiddenKeepers(actor, treeId), personIds);
    }

    /** Records an observation, or a correction of one. */
    @Transactional
    public Observation observe(Actor actor, long treeId, NewObservation observation) {
        return observations.observe(actor, treeId, observation);
    }

    /**
     * Records what was measured in one go: every value as {@link #observe} would, or none. Values
     * that look odd are asked about first; those confirmed by the question's key are kept.
     */
    @Transactional
    public SeriesOutcome recordSeries(Actor actor, long treeId, NewSeries measured) {
        return series.record(actor, treeId, measured);
    }

    /** What was measured last, as a help to whoever measures again. */
    @Transactional
    public LastReadings lastReadings(Actor actor, long treeId) {
        return series.last(actor, treeId);
    }

    /** Observations, latest first, corrected ones included and marked. */
    @Transactional
    public Paged<Observation> observations(Actor actor, long treeId, PageRequest page) {
        return observations.list(actor, treeId, page);
    }

    /** Whether an entry is there that nobody has corrected; no reach is asked. */
    @Transactional
    public boolean isInForce(long observationId) {
        return observations.isInForce(observationId);
    }

    /** Enters a wound. */
    @Transactional
    public Wound addWound(Actor actor, long treeId, NewWound wound) {
        return wounds.add(actor, treeId, wound);
    }

    /** Wounds with their readings, widest open first, deadwood by design last. */
    @Transactional
    public List<Wound> wounds(Actor actor, long treeId) {
        return wounds.of(actor, treeId);
    }

    /** How the wounds of a tree are going to close, and how its trunk thickens. */
    @Transactional
    public Growth growth(Actor actor, long treeId, LocalDate on) {
        reach.require(actor, treeId);
        return states.growth(treeId, on);
    }

    /** How one wound is going to close; 404 when the tree has no such wound on the day. */
    @Transactional
    public Closing closing(Actor actor, long treeId, long woundId, LocalDate on) {
        return growth(actor, treeId, on).closings().stream()
                .filter(closing -> closing.wound().id() == woundId)
                .findFirst()
                .orElseThrow(() -> Refused.notFound("wound", woundId));
    }

    /** Enters a branch. */
    @Transactional
    public Branch addBranch(Actor actor, long treeId, NewBranch branch) {
        return branches.add(actor, treeId, branch);
    }

    /** Notes that a branch was taken off; its readings stay in the record. */
    @Transactional
    public Branch takeOffBranch(Actor actor, long treeId, long branchId, LocalDate on) {
        return branches.takeOff(actor, treeId, branchId, on);
    }

    /** Branches with their latest readings. */
    @Transactional
    public List<Branch> branches(Actor actor, long treeId) {
        return branches.of(actor, treeId);
    }

    /** Moves a tree to another container. */
    @Transactional
    public ContainerStay moveTo(Actor actor, long treeId, NewContainer container) {
        return containers.moveTo(actor, treeId, container);
    }

    /** Containers, latest first. */
    @Transactional
    public List<ContainerStay> containers(Actor actor, long treeId) {
        return containers.of(actor, treeId);
    }

    /**
     * What each of some trees stood in on a day, in one query; trees nobody said it of are absent.
     * No reach is asked.
     */
    @Transactional
    public Map<Long, ContainerStay> containersOn(Collection<Long> treeIds, LocalDate day) {
        return containers.on(treeIds, day);
    }

    /** Records work done; `clock` is the technique's, null for none. */
    @Transactional
    public WorkDone recordWork(
            Actor actor, long treeId, Work work, @Nullable String clock, @Nullable String note) {
        return works.record(actor, treeId, work, clock, note);
    }

    /** Work done, latest first. */
    @Transactional
    public List<WorkDone> works(Actor actor, long treeId) {
        return works.of(actor, treeId);
    }

    /** Sets facts as the effect of signed-off work, as seen by the instructor on that day. */
    @Transactional
    public void setFacts(
            Actor actor, long treeId, Map<Fact, Value> facts, LocalDate on, String note) {
        observations.setFacts(actor, treeId, facts, on, note);
    }

    /**
     * The day each person last observed something of these trees, up to a day; those who never did
     * are absent. One query; no reach is asked.
     */
    @Transactional
    public Map<Long, LocalDate> lastObservedBy(
            Collection<Long> personIds, Collection<Long> treeIds, LocalDate until) {
        return observations.lastBy(personIds, treeIds, until);
    }

    /** The tree on a day. */
    @Transactional
    public TreeState stateOn(Actor actor, long treeId, LocalDate on) {
        reach.require(actor, treeId);
        return Objects.requireNonNull(states.on(List.of(treeId), on).get(treeId));
    }

    /**
     * Many trees on a day, in a number of queries that does not depend on how many; no reach is
     * asked.
     */
    @Transactional
    public Map<Long, TreeState> statesOn(Collection<Long> treeIds, LocalDate on) {
        return states.on(treeIds, on);
    }
}
