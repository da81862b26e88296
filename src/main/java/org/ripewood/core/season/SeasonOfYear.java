package org.ripewood.core.season;

import java.time.LocalDate;

/**
 * The season of a year that holds a day, for what lies too far ahead to be told by the day.
 *
 * <p>Seasons of three whole calendar months (the World Meteorological Organization's usage, from
 * memory): spring from 1 March north of the equator and from 1 September south of it. Between the
 * tropics, where a year has no such seasons, it is the quarter of the calendar.
 *
 * @param firstDay its first day
 * @param latitudeDegrees −90 to 90, south negative; the equator counts as north
 */
public record SeasonOfYear(LocalDate firstDay, double latitudeDegrees) {

    /** Before it there are no earlier months to go back to. */
    private static final LocalDate FIRST = LocalDate.MIN.plusMonths(3);

    private static final double TROPIC_DEGREES = 23.44;
    private static final String[] NORTH = {"winter", "spring", "summer", "autumn"};
    private static final String[] MONTHS = {"Jan–Mar", "Apr–Jun", "Jul–Sep", "Oct–Dec"};
    private static final String[] QUARTERS = {"first", "second", "third", "fourth"};

    /** The season that holds a day. */
    public static SeasonOfYear of(LocalDate day, double latitudeDegrees) {
        int offset = isTropical(latitudeDegrees) ? 1 : 0;
        int back = (day.getMonthValue() - offset) % 3;
        var month = day.withDayOfMonth(1);
        return new SeasonOfYear(
                month.isBefore(FIRST) ? month : month.minusMonths(back), latitudeDegrees);
    }

    private static boolean isTropical(double latitudeDegrees) {
        return Math.abs(latitudeDegrees) < TROPIC_DEGREES;
    }

    /** {@code "spring 2029"}, {@code "winter 2028/29"}, {@code "first quarter of 2029"}. */
    public String name() {
        int year = firstDay.getYear();
        if (isTropical(latitudeDegrees)) {
            return "%s quarter of %d".formatted(QUARTERS[firstDay.getMonthValue() / 3], year);
        }
        int place = firstDay.getMonthValue() % 12 / 3 + (latitudeDegrees < 0 ? 2 : 0);
        boolean intoNext = firstDay.getMonthValue() == 12;
        return NORTH[place % NORTH.length]
                + " "
                + (intoNext ? "%d/%02d".formatted(year, (year + 1) % 100) : year);
    }

    /** As short as can be: {@code "spring 2029"}, {@code "Jan–Mar 2029"}. */
    public String shortName() {
        return isTropical(latitudeDegrees)
                ? "%s %d".formatted(MONTHS[firstDay.getMonthValue() / 3], firstDay.getYear())
                : name();
    }

    /** Its name as it stands after "in" or "before". */
    public String spoken() {
        return isTropical(latitudeDegrees) ? "the " + name() : name();
    }

    /**
     * When something is expected, as a part of a sentence: {@code "about spring 2029, between
     * autumn 2028 and summer 2030"}, and {@code "in spring 2029"} where all three are one season.
     */
    public static String told(Outlook.Expected expected, double latitudeDegrees) {
        var earliest = of(expected.earliest(), latitudeDegrees).spoken();
        var likely = of(expected.likely(), latitudeDegrees).spoken();
        if (expected.latest() == null) {
            return "about %s; not before %s, and how late cannot be said"
                    .formatted(likely, earliest);
        }
        var latest = of(expected.latest(), latitudeDegrees).spoken();
        return earliest.equals(latest)
                ? "in " + likely
                : "about %s, between %s and %s".formatted(likely, earliest, latest);
    }

    /**
     * When something is to be expected that hangs on what was taken for granted: {@code "not before
     * autumn 2028, more likely about spring 2029"}.
     */
    public static String toldWithCare(Outlook.Expected expected, double latitudeDegrees) {
        var earliest = of(expected.earliest(), latitudeDegrees).spoken();
        var likely = of(expected.likely(), latitudeDegrees).spoken();
        return "not before "
                + earliest
                + (earliest.equals(likely) ? "" : ", more likely about " + likely);
    }
}
