package org.ripewood.firstlook;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.records.Containers;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewWound;
import org.ripewood.records.Question;
import org.ripewood.records.SeriesOutcome;
import org.ripewood.records.Wounds;
import org.ripewood.trees.Trees;

/** Writes answers into the record, each through the bean that keeps such entries. */
@ApplicationScoped
class LookBook {

    /** What a cut is called of which nobody has said more. */
    private static final String WIDEST = "widest cut at the first look";

    /** Shoots five times as long as before are as many as the fact can tell. */
    private static final double MOST_RATIO = 5;

    private final MeasurementSeries measuring;
    private final Containers containers;
    private final Wounds wounds;
    private final Trees trees;

    LookBook(MeasurementSeries measuring, Containers containers, Wounds wounds, Trees trees) {
        this.measuring = measuring;
        this.containers = containers;
        this.wounds = wounds;
        this.trees = trees;
    }

    void record(Actor actor, long treeId, LookQuestion question, NewLook look, LocalDate on) {
        switch (question) {
            case CONTAINER -> container(actor, treeId, look, on);
            case CUTS -> cut(actor, treeId, look, on);
            case TRUNK -> trunk(actor, treeId, look, on);
            case LINE -> line(actor, treeId, look, on);
            case SHOOTS -> shoots(actor, treeId, look, on);
            default -> drawn(actor, treeId, question, look, on);
        }
    }

    private void drawn(
            Actor actor, long treeId, LookQuestion question, NewLook look, LocalDate on) {
        var sheet = new LookSheet();
        chosen(question, look).seen().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(seen -> sheet.with(seen.getKey(), seen.getValue(), "answer"));
        keep(actor, treeId, sheet, look, on);
    }

    private static LookAnswer chosen(LookQuestion question, NewLook look) {
        var codes = question.answers().stream().map(LookAnswer::code).toList();
        var code = look.answer();
        if (code == null) {
            throw Refused.invalid("answer", "expected one of %s, found nothing".formatted(codes));
        }
        return question.answer(code)
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        "answer",
                                        "expected one of %s, found “%s”.%s"
                                                .formatted(
                                                        String.join(", ", codes),
                                                        code,
                                                        Suggestion.maybe(codes, code))));
    }

    /** Of a container nobody knows the age of it is known that it came in it. */
    private void container(Actor actor, long treeId, NewLook look, LocalDate on) {
        var kind = chosen(LookQuestion.CONTAINER, look).code();
        var since = before(actor, treeId, look.age(), on);
        var last = containers.of(actor, treeId).stream().findFirst();
        if (last.isPresent() && last.get().since().isAfter(since)) {
            since = last.get().since();
        }
        containers.moveTo(actor, treeId, new NewContainer(kind, null, null, since));
    }

    /** The day as long ago as people remember; the day the tree came when nobody knows. */
    private LocalDate before(Actor actor, long treeId, @Nullable String age, LocalDate on) {
        for (var known : LookAge.values()) {
            if (known.code().equals(age)) {
                return on.minusDays(known.days());
            }
        }
        var came = trees.get(actor, treeId).cameOn();
        return came.isAfter(on) ? on : came;
    }

    private void cut(Actor actor, long treeId, NewLook look, LocalDate on) {
        if (look.answer() != null) {
            drawn(actor, treeId, LookQuestion.CUTS, look, on);
            return;
        }
        require(LookQuestion.CUTS, look);
        double scar = Objects.requireNonNull(look.scarMm());
        double open = Objects.requireNonNull(look.openMm());
        if (open > scar) {
            throw Refused.invalid(
                    "openMm",
                    "expected at most the whole scar, %s mm, found %s. Maybe the two were exchanged."
                            .formatted(plain(scar), plain(open)));
        }
        var made = before(actor, treeId, look.age(), on);
        var wound =
                wounds.add(
                        actor, treeId, new NewWound(WIDEST, made, scar, scar, null, null, false));
        keep(actor, treeId, new LookSheet().opening(wound.id(), open, "openMm"), look, on);
    }

    private void trunk(Actor actor, long treeId, NewLook look, LocalDate on) {
        require(LookQuestion.TRUNK, look);
        double base = Objects.requireNonNull(look.baseMm());
        double height = Objects.requireNonNull(look.heightMm());
        var key = "wide:trunk_base_mm:" + plain(base);
        if (base > height && !confirmed(look, key)) {
            throw new OddLook(
                    List.of(
                            new Question(
                                    key,
                                    "baseMm",
                                    "The trunk would be thicker than the tree is tall. Maybe the two were"
                                            + " exchanged.")));
        }
        keep(
                actor,
                treeId,
                new LookSheet()
                        .with(Fact.TRUNK_BASE_MM, look.baseMm(), "baseMm")
                        .with(Fact.HEIGHT_MM, look.heightMm(), "heightMm")
                        .with(Fact.TRUNK_TARGET_MM, look.targetMm(), "targetMm"),
                look,
                on);
    }

    private void line(Actor actor, long treeId, NewLook look, LocalDate on) {
        require(LookQuestion.LINE, look);
        var height = measuring.last(actor, treeId).whole().get(Fact.HEIGHT_MM);
        if (height == null) {
            throw Refused.invalid(
                    "lowMm", "expected the height of the tree to be known first, found none");
        }
        double third = Math.max(1, Math.round(mm(height.value()) / 3));
        keep(
                actor,
                treeId,
                new LookSheet()
                        .diameter(third, Objects.requireNonNull(look.lowMm()), "lowMm")
                        .diameter(2 * third, Objects.requireNonNull(look.highMm()), "highMm"),
                look,
                on);
    }

    private static double mm(Value value) {
        return ((Value.Number) value).amount();
    }

    private void shoots(Actor actor, long treeId, NewLook look, LocalDate on) {
        require(LookQuestion.SHOOTS, look);
        double now = Objects.requireNonNull(look.shootMm());
        var before = look.shootBeforeMm();
        var ratio =
                before == null
                        ? null
                        : Double.valueOf(
                                Math.min(MOST_RATIO, Math.round(100 * now / before) / 100.0));
        keep(
                actor,
                treeId,
                new LookSheet()
                        .with(Fact.SHOOT_EXTENSION_MM, now, "shootMm")
                        .with(Fact.SHOOT_EXTENSION_RATIO, ratio, "shootBeforeMm"),
                look,
                on);
    }

    /** Every length that is not optional. */
    private static void require(LookQuestion question, NewLook look) {
        var faults = new ArrayList<Fault>();
        for (var number : question.numbers()) {
            if (!number.optional() && look.length(number.field()) == null) {
                faults.add(new Fault(number.field(), "expected a length in mm, found nothing"));
            }
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    private void keep(Actor actor, long treeId, LookSheet sheet, NewLook look, LocalDate on) {
        try {
            var outcome = measuring.record(actor, treeId, sheet.series(on, look.confirmed()));
            if (outcome instanceof SeriesOutcome.Asked asked && saidSo(asked.questions(), look)) {
                var keys = asked.questions().stream().map(Question::key).toList();
                outcome = measuring.record(actor, treeId, sheet.series(on, keys));
            }
            if (outcome instanceof SeriesOutcome.Asked asked) {
                throw new OddLook(sheet.atFields(asked.questions()));
            }
        } catch (Refused refused) {
            throw sheet.atFields(refused);
        }
    }

    /** A cut asked about was not kept, so the next try has another number in its keys. */
    private static boolean saidSo(List<Question> questions, NewLook look) {
        var confirmed = look.confirmed();
        return confirmed != null
                && confirmed.stream()
                        .map(LookBook::unnumbered)
                        .collect(Collectors.toSet())
                        .containsAll(
                                questions.stream()
                                        .map(question -> unnumbered(question.key()))
                                        .toList());
    }

    private static String unnumbered(String key) {
        return key.replaceAll(":wound[0-9]+:", ":wound:");
    }

    private static boolean confirmed(NewLook look, String key) {
        var confirmed = look.confirmed();
        return confirmed != null && confirmed.contains(key);
    }

    private static String plain(double mm) {
        return BigDecimal.valueOf(mm).stripTrailingZeros().toPlainString();
    }
}
