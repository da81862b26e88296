package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * How far each year of a place has come, by warmth and then by coolness; the same for every habit.
 *
 * <p>Warmth: degree-days above 5 °C since midwinter (the growing season's first day), before
 * midsummer only of days of at least 10 hours on which the usual night is not below −1 °C and the
 * coolest time of the year is over, as a share of the place's own mean year. Bounding the days
 * keeps a mild January from opening buds, and a thaw by noon from opening them in frozen ground;
 * chilling is not modelled. Heat above 32 °C adds nothing. Coolness: after midsummer, on days
 * shorter than 13.5 hours, what the day's mean lies below 20 °C, at most 15 °C a day, as a share of
 * the place's own mean up to midwinter. Shares, because trees kept at a place are chosen for it: a
 * maple of the warm south wants more warmth to open than one of the north. That cooling below 20 °C
 * on shortening days brings leaf fall follows Dufrêne et al. 2005, Ecological Modelling 185:407-436
 * (from memory); the bounds are rounded, common practice, no source.
 *
 * <p>Where the year has less than 100 degree-days nothing grows, and warmth stays 0. Where it has
 * less than 50 of coolness no autumn comes, and coolness stays 0.
 */
final class SeasonProgress {

    static final double BASE_CELSIUS = 5;

    /** Shorter days open no bud and grow no wood. Common practice, no source. */
    static final double LEAST_DAY_HOURS = 10;

    private static final double AUTUMN_DAY_HOURS = 13.5;
    private static final double COOL_BELOW_CELSIUS = 20;
    private static final double COOL_AT_MOST_CELSIUS = 15;
    private static final int MIDSUMMER_DAY = 172;
    private static final double LEAST_WARMTH = 100;
    private static final double LEAST_COOLNESS = 50;
    private static final double BUDS_MOVE_NIGHT_CELSIUS = -1;

    /** More heat adds no growth (from memory: most woody plants level off at 30 to 35 °C). */
    static final double UPPER_CELSIUS = 32;

    /** The coolest day may lie so far into the growing season, and buds wait for it. */
    private static final int COOLEST_WITHIN_DAYS = 75;

    private static final int MAX_YEARS = 200;

    private final Climate climate;
    private final LocalDate first;
    private final double[] hours;
    private final double[] warmth;
    private final double[] coolness;
    private final TypicalWeather place;

    private SeasonProgress(Climate climate, LocalDate first, int days) {
        this.climate = climate;
        this.first = first;
        this.hours = hours(climate.latitudeDegrees());
        this.warmth = new double[days];
        this.coolness = new double[days];
        this.place = TypicalWeather.of(climate, first, lastDay());
        addUp();
    }

    /**
     * Adds up whole growing seasons: those that hold the two days and all between.
     *
     * @throws IllegalArgumentException when the days run backwards or over more than 200 years
     */
    static SeasonProgress of(Climate climate, LocalDate from, LocalDate to) {
        if (to.isBefore(from) || from.until(to, ChronoUnit.YEARS) >= MAX_YEARS) {
            throw new IllegalArgumentException(
                    "a span of 1 day to 200 years is needed, found %s to %s".formatted(from, to));
        }
        var first = GrowingSeason.of(from, climate.latitudeDegrees()).firstDay();
        var end = GrowingSeason.of(to, climate.latitudeDegrees()).firstDay().plusYears(1);
        return new SeasonProgress(climate, first, (int) ChronoUnit.DAYS.between(first, end));
    }

    Climate climate() {
        return climate;
    }

    int days() {
        return warmth.length;
    }

    LocalDate firstDay() {
        return first;
    }

    LocalDate lastDay() {
        return first.plusDays(warmth.length - 1L);
    }

    /** The usual year of the place. */
    TypicalWeather place() {
        return place;
    }

    /** Whether trees never rest here ({@link TypicalWeather}). */
    boolean alwaysGrowing() {
        return place.withoutWinter();
    }

    /** Warmth on the morning of a day, 0 to about 1. */
    double warmth(int index) {
        return warmth[index];
    }

    /** Coolness on the morning of a day, 0 to about 1. */
    double coolness(int index) {
        return coolness[index];
    }

    double hours(LocalDate day) {
        return hours[day.getDayOfYear()];
    }

    GrowingSeason season(LocalDate day) {
        return GrowingSeason.of(day, climate.latitudeDegrees());
    }

    /** Whether the growing season is past its middle. */
    boolean pastMidsummer(LocalDate day) {
        return ChronoUnit.DAYS.between(season(day).firstDay(), day) >= MIDSUMMER_DAY;
    }

    /** A day's place in the span; days outside of it stand for the same day of its nearest year. */
    int index(LocalDate day) {
        var inside = day;
        if (day.isBefore(first)) {
            inside = day.plusYears(first.getYear() - season(day).firstDay().getYear());
        } else if (day.isAfter(lastDay())) {
            var lastSeason = season(lastDay()).firstDay();
            inside = day.minusYears(season(day).firstDay().getYear() - lastSeason.getYear());
        }
        return (int) ChronoUnit.DAYS.between(first, inside);
    }

    private void addUp() {
        double warm = 0;
        double cool = 0;
        double allWarm = 0;
        double allCool = 0;
        int seasons = 0;
        var seasonStart = first;
        for (int i = 0; i < warmth.length; i++) {
            var day = first.plusDays(i);
            if (i == 0 || day.equals(seasonStart.plusYears(1))) {
                seasonStart = day;
                allWarm += warm;
                allCool += cool;
                warm = 0;
                cool = 0;
                seasons++;
            }
            warmth[i] = warm;
            coolness[i] = cool;
            boolean past = ChronoUnit.DAYS.between(seasonStart, day) >= MIDSUMMER_DAY;
            warm += past || budsMove(day, seasonStart) ? warmthOf(day) : 0;
            cool += past ? coolOf(day) : 0;
        }
        scale(warmth, (allWarm + warm) / seasons, LEAST_WARMTH);
        scale(coolness, (allCool + cool) / seasons, LEAST_COOLNESS);
    }

    /** Whether warmth before midsummer moves buds: light, nights, and no cooler days to come. */
    private boolean budsMove(LocalDate day, LocalDate seasonStart) {
        int coolestAt = place.daysToCoolest(seasonStart);
        return hours(day) >= LEAST_DAY_HOURS
                && place.minCelsius(day) >= BUDS_MOVE_NIGHT_CELSIUS
                && (coolestAt > COOLEST_WITHIN_DAYS
                        || ChronoUnit.DAYS.between(seasonStart, day) >= coolestAt);
    }

    private double warmthOf(LocalDate day) {
        return ThermalTime.ofDay(climate.temperatures(), day, BASE_CELSIUS, UPPER_CELSIUS);
    }

    private double coolOf(LocalDate day) {
        if (hours(day) >= AUTUMN_DAY_HOURS) {
            return 0;
        }
        var temperatures = climate.temperatures();
        double mean = (temperatures.minCelsius(day) + temperatures.maxCelsius(day)) / 2;
        return Math.max(0, Math.min(COOL_AT_MOST_CELSIUS, COOL_BELOW_CELSIUS - mean));
    }

    private static void scale(double[] sums, double mean, double least) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] = mean < least ? 0 : sums[i] / mean;
        }
    }

    private static double[] hours(double latitudeDegrees) {
        var hours = new double[367];
        for (int day = 1; day < hours.length; day++) {
            hours[day] = DayLength.hours(latitudeDegrees, day);
        }
        return hours;
    }
}
