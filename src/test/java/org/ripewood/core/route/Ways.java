package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Work;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.StageClock;

/** Makes small routes for tests, each step differing from a plain one in what it says. */
final class Ways {

    static final LocalDate DAY = LocalDate.of(2025, 1, 1);

    /** The month as a stage: January 1, December 12. */
    static final StageClock MONTHS = LocalDate::getMonthValue;

    private Ways() {}

    static RouteStart start(Work... works) {
        return start(DAY, works);
    }

    static RouteStart start(LocalDate on, Work... works) {
        return new RouteStart(on, new WorkLedger(List.of(works), 50), 8, MONTHS);
    }

    static Set<Integer> months(int from, int to) {
        return IntStream.rangeClosed(from, to).boxed().collect(Collectors.toSet());
    }

    static final class StepOf {
        final String code;
        int stageOrder = 1;
        List<String> after = List.of();
        Set<Integer> open = RouteStep.ANY_TIME;
        double stress;
        int recoveryDays;
        int quietDaysBefore;
        @Nullable DoseRule dose;
        final List<Wait> waits = new ArrayList<>();
        final List<Lag> lags = new ArrayList<>();
        @Nullable LocalDate doneOn;
        int turns = 1;
        int repeatAfterDays;
        boolean inTurn;

        StepOf(String code, String... after) {
            this.code = code;
            this.after = List.of(after);
        }

        StepOf open(int from, int to) {
            open = months(from, to);
            return this;
        }

        StepOf heavy() {
            stress = 6;
            return this;
        }

        StepOf waits(String fact, Outlook outlook) {
            waits.add(Wait.of(fact, outlook));
            return this;
        }

        StepOf lag(String after, int days) {
            lags.add(Lag.sure(after, "time", days));
            return this;
        }

        RouteStep make() {
            return new RouteStep(
                    code,
                    stageOrder,
                    after,
                    open,
                    stress,
                    recoveryDays,
                    quietDaysBefore,
                    dose,
                    waits,
                    lags,
                    doneOn,
                    turns,
                    repeatAfterDays,
                    inTurn ? RouteStep.Turn.WAITS : RouteStep.Turn.NONE);
        }
    }

    static List<RouteStep> steps(StepOf... steps) {
        return Arrays.stream(steps).map(StepOf::make).toList();
    }

    static Route sure(StepOf... steps) {
        return Route.simulate(start(), steps(steps), 9, 3, 1);
    }

    static LocalDate likely(Route route, String code) {
        return likely(route.find(code).orElseThrow().when());
    }

    static LocalDate likely(Outlook outlook) {
        return ((Outlook.Expected) outlook).likely();
    }
}
