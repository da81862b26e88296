package org.ripewood.course;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.route.Durations;
import org.ripewood.platform.problems.Refused;

/**
 * All content of one revision; immutable.
 *
 * @param revision first 12 hexadecimal digits of the SHA-256 over all files
 * @param ofSchool paths of files laid over the content by the school, replaced or added
 * @param techniques by code, in telling order (stage by stage, as far as what comes first allows)
 * @param works groups of work in order, which hold every technique but care once
 * @param shortTitles of techniques by code, four words at most
 * @param lessons by code, by stage and order
 * @param pictures of lessons, by the name of their file
 * @param glossary words of the trade, in the order of the alphabet
 * @param cases what teachers say of trees, topic by topic, by which the rules can be tried
 * @param durations how long things take on a tree's route
 */
public record Content(
        String revision,
        Set<String> ofSchool,
        List<Stage> stages,
        Map<String, Group> groups,
        Map<Fact, FactText> facts,
        Map<String, Species> species,
        Map<String, Technique> techniques,
        List<Work> works,
        Map<String, String> shortTitles,
        Map<String, Lesson> lessons,
        Map<String, LessonPicture> pictures,
        Map<String, Rubric> rubrics,
        List<Term> glossary,
        List<JudgementCase> cases,
        Durations durations,
        Rulebook rulebook) {

    /** A group of species that rules may name. */
    public record Group(String code, String title, String note) {}

    /**
     * A word of the trade.
     *
     * @param also other words for the same thing
     * @param says what it means
     * @param techniques codes of those in which it matters most
     * @param lessons codes of those that tell more
     */
    public record Term(
            String word,
            List<String> also,
            String says,
            List<String> techniques,
            List<String> lessons) {
        public Term {
            also = List.copyOf(also);
            techniques = List.copyOf(techniques);
            lessons = List.copyOf(lessons);
        }

        /** Names it in an address: its letters and digits, joined by hyphens. */
        public String code() {
            return word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        }
    }

    /**
     * A group of work a tree passes through.
     *
     * @param techniques codes of those that belong to it, in telling order
     */
    public record Work(String code, String title, String note, List<String> techniques) {
        public Work {
            techniques = List.copyOf(techniques);
        }
    }

    public Content {
        ofSchool = Collections.unmodifiableSet(new LinkedHashSet<>(ofSchool));
        stages = List.copyOf(stages);
        groups = inOrder(groups);
        facts = inOrder(facts);
        species = inOrder(species);
        techniques = inOrder(techniques);
        works = List.copyOf(works);
        shortTitles = inOrder(shortTitles);
        lessons = inOrder(lessons);
        pictures = inOrder(pictures);
        rubrics = inOrder(rubrics);
        glossary = List.copyOf(glossary);
        cases = List.copyOf(cases);
    }

    /** A copy nobody can change, in the same order. */
    private static <K, V> Map<K, V> inOrder(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /** Codes of the techniques that move a tree on; care left out. */
    public Set<String> steps() {
        return techniques.values().stream()
                .filter(technique -> technique.rule().purpose() != TechniqueRule.Purpose.CARE)
                .map(Technique::code)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Whether a species, or what is said of it here, is the school's own. */
    public boolean isOfSchool(Species species) {
        return ofSchool.contains(ContentKind.SPECIES.file(species.code()));
    }

    /** Whether a technique, or what is said of it here, is the school's own. */
    public boolean isOfSchool(Technique technique) {
        return ofSchool.contains(ContentKind.TECHNIQUE.file(technique.code()));
    }

    /** Whether a lesson, or what is said in it here, is the school's own. */
    public boolean isOfSchool(Lesson lesson) {
        return ofSchool.contains(ContentKind.LESSON.file(lesson.code()));
    }

    public Technique technique(String code) {
        var technique = techniques.get(code);
        if (technique == null) {
            throw Refused.notFound("technique", code);
        }
        return technique;
    }

    /** A technique's title; its code where the content does not have it, or no longer. */
    public String titleOf(String technique) {
        var found = techniques.get(technique);
        return found == null ? technique : found.title();
    }

    /** A technique's title in four words at most; its code where the content does not have it. */
    public String shortTitleOf(String technique) {
        return shortTitles.getOrDefault(technique, technique);
    }

    public Species species(String code) {
        var found = species.get(code);
        if (found == null) {
            throw Refused.notFound("species", code);
        }
        return found;
    }

    /**
     * What a tree of a record is; a species that says so where the content does not have it, or no
     * longer, so that one tree never hides the others.
     */
    public Species kindOf(String code) {
        var found = species.get(code);
        return found == null ? Species.notInContent(code) : found;
    }

    public Lesson lesson(String code) {
        var lesson = lessons.get(code);
        if (lesson == null) {
            throw Refused.notFound("lesson", code);
        }
        return lesson;
    }

    public Rubric rubric(String code) {
        var rubric = rubrics.get(code);
        if (rubric == null) {
            throw Refused.notFound("rubric", code);
        }
        return rubric;
    }

    public LessonPicture picture(String name) {
        var picture = pictures.get(name);
        if (picture == null) {
            throw Refused.notFound("picture", name);
        }
        return picture;
    }

    /** Codes of techniques after which all foliage of a tree is new growth. */
    public Set<String> renewing() {
        return techniques.values().stream()
                .map(Technique::rule)
                .filter(Content::renewsFoliage)
                .map(TechniqueRule::code)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** By code of technique: the facts it leaves to be measured again. */
    public Map<String, Set<Fact>> unsettled() {
        return techniques.values().stream()
                .filter(technique -> !technique.unsettles().isEmpty())
                .collect(
                        Collectors.toUnmodifiableMap(
                                Technique::code, technique -> Set.copyOf(technique.unsettles())));
    }

    private static boolean renewsFoliage(TechniqueRule rule) {
        var dose = rule.dose();
        return dose != null && dose.startsAnew();
    }

    public FactText text(Fact fact) {
        var text = facts.get(fact);
        if (text == null) {
            throw new IllegalStateException("no text for " + fact);
        }
        return text;
    }
}
