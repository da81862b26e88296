package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.GrowthTime;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.Outlook;

/** A wound nobody has read yet, at places that differ by their warmth alone. */
class WarmthTest {

    private static final LocalDate FIRST = LocalDate.of(2016, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2062, 12, 31);
    private static final LocalDate MADE = LocalDate.of(2026, 3, 10);

    @RepeatedTest(12)
    void aWarmerPlaceIsNeverSlower(RepetitionInfo repetition) {
        long seed = repetition.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        double latitude = (random.nextBoolean() ? 1 : -1) * (35 + 20 * random.nextDouble());
        double cool = -3 + 4 * random.nextDouble();
        double widthMm = 8 + 22 * random.nextDouble();
        var before = likely(widthMm, latitude, cool);
        for (double warmer : new double[] {1, 2.5, 4}) {
            var likely = likely(widthMm, latitude, cool + warmer);
            assertThat(likely)
                    .as("seed %d, %.1f °C warmer", seed, warmer)
                    .isBeforeOrEqualTo(before);
            before = likely;
        }
    }

    private static LocalDate likely(double widthMm, double latitude, double warmer) {
        var growth = GrowthTime.of(place(latitude, warmer), Habit.DECIDUOUS, 5, FIRST, LAST);
        var closure = Closure.of(MADE, widthMm, List.of());
        var outlook =
                ClosureForecast.of(closure, CallusPace.MODERATE.belief(), 75.0, null, growth)
                        .whenAtMost(0, MADE);
        assertThat(outlook).isInstanceOf(Outlook.Expected.class);
        return ((Outlook.Expected) outlook).likely();
    }

    /** A year of its own making: no measured place. */
    private static Climate place(double latitude, double warmer) {
        var low = means(latitude, warmer, 1, 1, 3, 5, 8, 11, 13, 13, 10, 7, 4, 2);
        var high = means(latitude, warmer, 6, 8, 11, 14, 18, 21, 24, 24, 20, 15, 9, 6);
        return new Climate(latitude, NormalYear.of(low, high));
    }

    private static List<Double> means(double latitude, double warmer, double... months) {
        int shift = latitude < 0 ? 6 : 0;
        return DoubleStream.iterate(0, month -> month + 1)
                .limit(12)
                .mapToObj(month -> months[((int) month + shift) % 12] + warmer)
                .toList();
    }
}
