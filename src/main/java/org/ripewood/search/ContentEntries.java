package org.ripewood.search;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Rubric;
import org.ripewood.course.Stage;
import org.ripewood.course.Technique;

/** What is taught, as it is found; made once for each revision of the content. */
@ApplicationScoped
class ContentEntries {

    private record Made(Content of, List<Entry> entries) {}

    private final CourseContent content;
    private volatile @Nullable Made made;

    ContentEntries(CourseContent content) {
        this.content = content;
    }

    List<Entry> all() {
        var inForce = content.inForce();
        var known = made;
        if (known == null || !known.of().revision().equals(inForce.revision())) {
            known = new Made(inForce, of(inForce));
            made = known;
        }
        return known.entries();
    }

    static List<Entry> of(Content content) {
        var entries = new ArrayList<Entry>();
        content.techniques().values().forEach(one -> entries.add(technique(one)));
        content.lessons().values().forEach(one -> entries.add(lesson(one, content)));
        content.species()
                .values()
                .forEach(
                        one ->
                                entries.add(
                                        Entry.of(
                                                Hit.of(
                                                        Kind.SPECIES,
                                                        one.code(),
                                                        one.common(),
                                                        one.latin()),
                                                List.of(one.latin()),
                                                List.of(one.text()))));
        content.rubrics().values().forEach(one -> entries.add(rubric(one)));
        content.glossary()
                .forEach(
                        one ->
                                entries.add(
                                        Entry.of(
                                                Hit.of(
                                                        Kind.WORD,
                                                        one.code(),
                                                        one.word(),
                                                        one.says()),
                                                one.also(),
                                                List.of(one.says()))));
        return List.copyOf(entries);
    }

    private static Entry technique(Technique one) {
        return Entry.of(
                Hit.of(Kind.TECHNIQUE, one.code(), one.title(), one.summary()),
                List.of(one.code().replace('_', ' ')),
                List.of(one.summary(), one.teaching()));
    }

    private static Entry lesson(Lesson one, Content content) {
        var stage =
                content.stages().stream()
                        .filter(found -> found.code().equals(one.stage()))
                        .map(Stage::title)
                        .collect(Collectors.joining());
        return Entry.of(
                Hit.of(
                        Kind.LESSON,
                        one.code(),
                        one.title(),
                        "%s, %d minutes".formatted(stage, one.minutes())),
                one.teaches().stream().map(content::titleOf).toList(),
                List.of(one.html().replaceAll("<[^>]*>", " ")));
    }

    private static Entry rubric(Rubric one) {
        var levels =
                one.levels().stream()
                        .flatMap(level -> Stream.of(level.word(), level.description()))
                        .toList();
        return Entry.of(
                Hit.of(Kind.RUBRIC, one.code(), one.title(), one.question()),
                List.of(one.code().replace('-', ' ')),
                levels);
    }
}
