package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.SchoolLevel;
import org.ripewood.core.growth.ShootSample;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.people.Samples;
import org.ripewood.platform.Today;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.sites.Seasons;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/**
 * What shoots are held against: the content's lengths of each species, sharpened by the shoots of
 * the school's own trees. Worked out once a day and content revision, for all species at once.
 *
 * <p>It tells of species and never of one tree, so it asks no reach.
 */
@ApplicationScoped
@Transactional
public class SchoolShoots {

    /** The latest measured ones; they are read as whole records. */
    private static final int MOST_TREES = 2000;

    /** What grew longer ago grew under other care, and on younger trees. */
    private static final int YEARS_BACK = 10;

    private record Learnt(LocalDate day, String revision, Map<String, ReferenceShoots> shoots) {}

    private final RecordsUnchecked records;
    private final TreesUnchecked trees;
    private final Samples samples;
    private final CourseContent content;
    private final Seasons seasons;
    private final Today today;
    private final boolean wanted;
    private volatile @Nullable Learnt learnt;

    /**
     * @param wanted whether the school's record counts; the content's lengths alone do otherwise
     */
    SchoolShoots(
            RecordsUnchecked records,
            TreesUnchecked trees,
            Samples samples,
            CourseContent content,
            Seasons seasons,
            Today today,
            @ConfigProperty(name = "ripewood.strength.school-record") boolean wanted) {
        this.records = records;
        this.trees = trees;
        this.samples = samples;
        this.content = content;
        this.seasons = seasons;
        this.today = today;
        this.wanted = wanted;
    }

    /** Whether the school's record counts; registrars set so for the service. */
    public boolean isWanted() {
        return wanted;
    }

    /** What the shoots of a species are held against; null for one the content does not have. */
    public @Nullable ReferenceShoots of(Species species) {
        var shoots = species.shoots();
        if (shoots == null) {
            return null;
        }
        // An import retells years gone by, when nothing of this was known yet.
        if (!wanted || today.isRetold()) {
            return ReferenceShoots.of(shoots);
        }
        return known().getOrDefault(species.code(), ReferenceShoots.of(shoots));
    }

    private Map<String, ReferenceShoots> known() {
        var inForce = content.inForce();
        var day = today.date();
        var known = learnt;
        if (known == null
                || !known.day().equals(day)
                || !known.revision().equals(inForce.revision())) {
            known = new Learnt(day, inForce.revision(), learn(inForce, day));
            learnt = known;
        }
        return known.shoots();
    }

    private Map<String, ReferenceShoots> learn(Content inForce, LocalDate day) {
        var since = day.minusYears(YEARS_BACK);
        var samples = new HashMap<String, List<ShootSample>>();
        for (var record : records.of(told(since), day)) {
            var species = inForce.species().get(record.tree().species());
            if (species != null) {
                var growing = seasons.of(record.site(), species).growing();
                samples.computeIfAbsent(species.code(), any -> new ArrayList<>())
                        .addAll(new HealthyShoots(record, growing).since(since));
            }
        }
        var learned = new HashMap<String, ReferenceShoots>();
        samples.forEach(
                (code, measured) -> {
                    var shoots = inForce.species(code).shoots();
                    if (shoots != null) {
                        learned.put(code, ReferenceShoots.of(shoots, measured));
                    }
                });
        return Map.copyOf(learned);
    }

    /** Measured trees at the school, of species with enough of them; made-up ones do not count. */
    private List<Tree> told(LocalDate since) {
        var madeUp = samples.madeUp();
        return trees.byIds(records.treesWithShoots(since, MOST_TREES)).stream()
                .filter(tree -> !tree.left() && !madeUp.contains(tree.keeperId()))
                .collect(Collectors.groupingBy(Tree::species))
                .values()
                .stream()
                .filter(kind -> kind.size() >= SchoolLevel.FEWEST_TREES)
                .flatMap(List::stream)
                .toList();
    }
}
