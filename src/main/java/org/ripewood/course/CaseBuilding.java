package org.ripewood.course;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Verdict;

/** Makes judgement cases of their files: what a case does not say itself its topic says for it. */
final class CaseBuilding {

    /** How long ago things were seen that do not say so themselves. */
    private static final int USUAL_AGE = 10;

    private final ContentDocuments shelf;
    private final UnaryOperator<String> place;
    private final Map<String, JudgementCase.Climate> climates = new LinkedHashMap<>();

    /**
     * @param place tells in which folder and file a path inside the content lies
     */
    CaseBuilding(ContentDocuments shelf, UnaryOperator<String> place) {
        this.shelf = shelf;
        this.place = place;
        shelf.all(ContentKind.CLIMATE)
                .forEach((code, document) -> climates.put(code, climate(document.top())));
    }

    List<JudgementCase> cases() {
        var cases = new ArrayList<JudgementCase>();
        for (var document : shelf.all(ContentKind.CASES).values()) {
            var topic = document.top();
            topic.each("cases").forEach(one -> cases.add(one(topic, one)));
        }
        return cases;
    }

    private static JudgementCase.Climate climate(Part climate) {
        return new JudgementCase.Climate(
                climate.requireText("code"),
                climate.requireText("title"),
                climate.number("latitude"),
                climate.each("minCelsius").stream().map(Part::number).toList(),
                climate.each("maxCelsius").stream().map(Part::number).toList());
    }

    private JudgementCase one(Part topic, Part one) {
        var common = topic.at("tree");
        var skills = nearest("skills", one, common);
        var waivable = one.at("waivable");
        return new JudgementCase(
                topic.requireText("code"),
                one.requireText("name"),
                one.requireText("title"),
                place.apply(one.file()),
                one.line(),
                one.requireText("species"),
                Objects.requireNonNull(climates.get(nearest("climate", one, common).text())),
                MonthDay.parse("--" + one.requireText("day")),
                tree(one, common),
                skills.isThere()
                        ? skills.each().stream().map(Part::text).collect(Collectors.toSet())
                        : null,
                one.requireText("technique"),
                one.texts("verdicts").stream().map(Verdict::valueOf).collect(Collectors.toSet()),
                reasons(one, "against"),
                reasons(one, "notAgainst"),
                waivable.isThere() ? (Boolean) waivable.value().booleanValue() : null,
                Set.copyOf(one.texts("stages")),
                one.requireText("why"),
                one.requireText("source"));
    }

    /** What the case says itself, else what its topic says. */
    private static Part nearest(String name, Part one, Part common) {
        return one.has(name) ? one.at(name) : common.at(name);
    }

    private static List<Set<String>> reasons(Part one, String name) {
        return one.texts(name).stream().map(CaseCheck::alternatives).toList();
    }

    private static JudgementCase.Tree tree(Part one, Part common) {
        var age = nearest("age", one, common);
        int usual = age.isThere() ? age.value().intValue() : USUAL_AGE;
        var eye = eye(nearest("eye", one, common), Source.INSTRUCTOR);
        var container = nearest("container", one, common);
        return new JudgementCase.Tree(
                known(one, common, usual, eye),
                nearest("profile", one, common).each().stream()
                        .map(mark -> mark(mark, usual))
                        .toList(),
                nearest("wounds", one, common).each().stream().map(CaseBuilding::cut).toList(),
                nearest("branches", one, common).each().stream()
                        .map(branch -> branch(branch, usual))
                        .toList(),
                container.isThere()
                        ? new JudgementCase.Stay(
                                container.requireText("kind"), container.requireInt("sinceDaysAgo"))
                        : null,
                done(nearest("signedOff", one, common)),
                done(nearest("works", one, common)));
    }

    /** The topic's facts without those the case tells itself or calls unknown, then the case's. */
    private static List<JudgementCase.Known> known(Part one, Part common, int usual, Source eye) {
        var own = one.each("known");
        var told = own.stream().map(FactCheck::fact).collect(Collectors.toSet());
        one.texts("unknown").forEach(code -> told.add(Fact.find(code).orElseThrow()));
        var known = new ArrayList<JudgementCase.Known>();
        for (var seen : common.each("known")) {
            if (!told.contains(FactCheck.fact(seen))) {
                known.add(known(seen, usual, eye));
            }
        }
        own.forEach(seen -> known.add(known(seen, usual, eye)));
        return known;
    }

    private static JudgementCase.Known known(Part seen, int usual, Source eye) {
        return new JudgementCase.Known(
                Objects.requireNonNull(FactCheck.fact(seen)),
                Objects.requireNonNull(FactCheck.value(seen.at("is"))),
                daysAgo(seen, usual),
                eye(seen.at("eye"), eye));
    }

    private static JudgementCase.Mark mark(Part mark, int usual) {
        return new JudgementCase.Mark(
                mark.number("height"), mark.number("mm"), daysAgo(mark, usual));
    }

    private static JudgementCase.Cut cut(Part wound) {
        var width = wound.number("width");
        return new JudgementCase.Cut(
                wound.requireInt("madeDaysAgo"),
                width,
                wound.has("length") ? wound.number("length") : width,
                wound.has("deadwood") && wound.at("deadwood").value().booleanValue(),
                wound.each("looks").stream()
                        .map(
                                look ->
                                        new JudgementCase.Look(
                                                look.requireInt("daysAgo"),
                                                look.number("open"),
                                                eye(look.at("eye"), Source.INSTRUCTOR)))
                        .toList());
    }

    private static JudgementCase.Grown branch(Part branch, int usual) {
        return new JudgementCase.Grown(
                branch.requireText("name"),
                branch.requireText("role"),
                number(branch, "mm"),
                number(branch, "trunk"),
                daysAgo(branch, usual));
    }

    private static List<JudgementCase.Done> done(Part list) {
        return list.each().stream()
                .map(
                        done ->
                                new JudgementCase.Done(
                                        done.requireText("technique"),
                                        done.requireInt("daysAgo"),
                                        number(done, "foliage"),
                                        number(done, "roots")))
                .toList();
    }

    private static int daysAgo(Part seen, int usual) {
        return seen.has("daysAgo") ? seen.requireInt("daysAgo") : usual;
    }

    private static Source eye(Part eye, Source usual) {
        return eye.isThere()
                ? ("student".equals(eye.text()) ? Source.STUDENT : Source.INSTRUCTOR)
                : usual;
    }

    private static @Nullable Double number(Part part, String name) {
        return part.has(name) ? (Double) part.number(name) : null;
    }
}
