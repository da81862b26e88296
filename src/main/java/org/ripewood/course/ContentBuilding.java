package org.ripewood.course;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Criterion.Ages;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.route.Durations;

/** Makes content of files that were found faultless. */
final class ContentBuilding {

    private final ContentDocuments shelf;
    private final UnaryOperator<String> html;
    private final UnaryOperator<String> place;

    ContentBuilding(
            ContentDocuments shelf, UnaryOperator<String> html, UnaryOperator<String> place) {
        this.shelf = shelf;
        this.html = html;
        this.place = place;
    }

    Content build(ContentFiles files) {
        var facts = facts();
        var stages = stages(facts);
        var stageOrders = new LinkedHashMap<String, Integer>();
        stages.forEach(stage -> stageOrders.put(stage.code(), stage.order()));
        var species = each(ContentKind.SPECIES, new SpeciesBuilding(shelf)::species);
        var techniques = techniques(stageOrders, facts);
        return new Content(
                files.revision(),
                files.added(),
                stages,
                groups(),
                facts,
                species,
                techniques,
                works(techniques.keySet()),
                shortTitles(techniques),
                lessons(stageOrders),
                shelf.pictures(),
                each(ContentKind.RUBRIC, ContentBuilding::rubric),
                glossary(),
                new CaseBuilding(shelf, place).cases(),
                durations(),
                Rulebook.compile(
                        techniques.values().stream().map(Technique::rule).toList(),
                        stages.stream().map(Stage::rule).toList(),
                        species.values().stream().map(Species::traits).toList()));
    }

    private List<Content.Term> glossary() {
        return shelf.entries(ContentKind.GLOSSARY, "terms").stream()
                .map(
                        term ->
                                new Content.Term(
                                        term.requireText("word"),
                                        term.texts("also"),
                                        term.requireText("says"),
                                        term.texts("techniques"),
                                        term.texts("lessons")))
                .sorted(Comparator.comparing(Content.Term::word, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /** The groups of work, each with its techniques in telling order. */
    private List<Content.Work> works(Collection<String> tellingOrder) {
        return shelf.entries(ContentKind.WORKS, "works").stream()
                .map(
                        work -> {
                            var code = work.requireText("code");
                            return new Content.Work(
                                    code,
                                    work.requireText("title"),
                                    work.requireText("note"),
                                    tellingOrder.stream()
                                            .filter(one -> code.equals(workOf(one)))
                                            .toList());
                        })
                .toList();
    }

    private @Nullable String workOf(String technique) {
        var document = shelf.all(ContentKind.TECHNIQUE).get(technique);
        return document == null ? null : document.top().text("work");
    }

    private Map<String, String> shortTitles(Map<String, Technique> techniques) {
        var titles = new LinkedHashMap<String, String>();
        techniques.forEach(
                (code, technique) -> {
                    var document = shelf.all(ContentKind.TECHNIQUE).get(code);
                    var brief = document == null ? null : document.top().text("short");
                    titles.put(code, brief == null ? technique.title() : brief);
                });
        return titles;
    }

    private Durations durations() {
        return shelf.all(ContentKind.DURATIONS).values().stream()
                .map(file -> RuleBuilding.durations(file.top()))
                .findFirst()
                .orElse(Durations.NONE);
    }

    private List<Stage> stages(Map<Fact, FactText> facts) {
        return shelf.entries(ContentKind.STAGES, "stages").stream()
                .map(
                        stage ->
                                new Stage(
                                        RuleBuilding.stage(stage, facts),
                                        stage.requireText("title"),
                                        stage.requireText("aim"),
                                        stage.requireText("ready")))
                .sorted(Comparator.comparingInt(Stage::order))
                .toList();
    }

    private Map<String, Content.Group> groups() {
        var groups = new LinkedHashMap<String, Content.Group>();
        for (var group : shelf.entries(ContentKind.GROUPS, "groups")) {
            var code = group.requireText("code");
            groups.put(
                    code,
                    new Content.Group(code, group.requireText("title"), group.requireText("note")));
        }
        return groups;
    }

    private Map<Fact, FactText> facts() {
        var facts = new EnumMap<Fact, FactText>(Fact.class);
        for (var entry : shelf.entries(ContentKind.FACTS, "facts")) {
            var code = entry.requireText("code");
            facts.put(
                    Fact.find(code).orElseThrow(),
                    new FactText(
                            code,
                            entry.requireText("title"),
                            entry.requireText("unit"),
                            entry.requireText("how"),
                            ages(entry.text("ages")),
                            brief(entry)));
        }
        return facts;
    }

    private static FactText.Brief brief(Part entry) {
        var unit = entry.requireText("unit");
        if (!entry.has("short")) {
            return FactText.briefly(entry.requireText("title"), unit);
        }
        var brief = entry.at("short");
        var own = brief.text("unit");
        return new FactText.Brief(
                brief.requireText("words"),
                own == null ? unit : own,
                brief.has("times") ? brief.number("times") : 1,
                brief.text("whenTrue"),
                brief.text("whenFalse"));
    }

    private static Ages ages(@Nullable String word) {
        return word == null ? Ages.DAYS : Ages.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private Map<String, Technique> techniques(
            Map<String, Integer> stageOrders, Map<Fact, FactText> facts) {
        var techniques = new LinkedHashMap<String, Technique>();
        var building = new TechniqueBuilding(stageOrders, facts, ofAllStyling(facts));
        var documents = shelf.all(ContentKind.TECHNIQUE);
        for (var code : TechniqueOrder.of(shelf).tellingOrder(stageOrders)) {
            var document = documents.get(code);
            if (document != null) {
                techniques.put(code, building.technique(document.top()));
            }
        }
        return techniques;
    }

    /** The criteria that every technique of styling has. */
    private List<Criterion> ofAllStyling(Map<Fact, FactText> facts) {
        return shelf.all(ContentKind.STAGES).values().stream()
                .flatMap(one -> one.top().at("styling").each("criteria").stream())
                .map(criterion -> RuleBuilding.criterion(criterion, facts))
                .toList();
    }

    private Map<String, Lesson> lessons(Map<String, Integer> stageOrders) {
        var lessons = new LinkedHashMap<String, Lesson>();
        each(ContentKind.LESSON, this::lesson).values().stream()
                .sorted(
                        Comparator.<Lesson>comparingInt(
                                        lesson -> stageOrders.getOrDefault(lesson.stage(), 0))
                                .thenComparingInt(Lesson::order))
                .forEach(lesson -> lessons.put(lesson.code(), lesson));
        return lessons;
    }

    private Lesson lesson(Part lesson) {
        var code = lesson.requireText("code");
        return new Lesson(
                code,
                lesson.requireText("title"),
                lesson.requireText("stage"),
                lesson.requireInt("order"),
                lesson.requireInt("minutes"),
                lesson.texts("teaches"),
                lesson.text("skill"),
                lesson.requireText("source"),
                html.apply(shelf.body(code).text()));
    }

    private static Rubric rubric(Part rubric) {
        var feeds = rubric.at("feeds");
        var fact = FactCheck.fact(feeds);
        return new Rubric(
                rubric.requireText("code"),
                rubric.requireText("title"),
                Rubric.Subject.valueOf(rubric.requireText("subject").toUpperCase(Locale.ROOT)),
                rubric.requireText("question"),
                rubric.each("levels").stream()
                        .map(
                                level ->
                                        new Rubric.Level(
                                                level.requireInt("level"),
                                                level.requireText("word"),
                                                level.requireText("description")))
                        .toList(),
                fact == null
                        ? null
                        : new Rubric.Feeds(
                                fact, feeds.each("perLevel").stream().map(Part::number).toList()),
                rubric.has("shows") ? shows(rubric.at("shows")) : null,
                rubric.requireText("source"));
    }

    private static Rubric.Shows shows(Part shows) {
        return new Rubric.Shows(shows.texts("lessons"), shows.requireInt("fromLevel"));
    }

    private <T> Map<String, T> each(ContentKind kind, Function<Part, T> make) {
        var made = new LinkedHashMap<String, T>();
        shelf.all(kind).forEach((code, document) -> made.put(code, make.apply(document.top())));
        return made;
    }
}
