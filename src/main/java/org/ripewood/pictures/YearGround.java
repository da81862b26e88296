package org.ripewood.pictures;

import java.time.LocalDate;
import org.ripewood.core.season.GrowingSeason;

/** Growing seasons as stripes behind a timeline, every second one shaded, named by their years. */
record YearGround(Pen pen, DayScale days, double latitudeDegrees, double namesFromPx) {

    /** Room for the name of a season. */
    private static final double ROOM_PX = 40;

    /** More stripes than this say nothing. */
    private static final int MOST = 60;

    void draw(double top, double bottom) {
        var first = GrowingSeason.of(days.first(), latitudeDegrees).firstDay();
        int count = days.last().getYear() - first.getYear() + 1;
        if (count > MOST) {
            days.draw(pen, top, bottom);
            return;
        }
        double told = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            var from = first.plusYears(i);
            if (from.isAfter(days.last())) {
                return;
            }
            told = stripe(from, i % 2 == 1, top, bottom, told);
        }
    }

    private double stripe(LocalDate from, boolean shaded, double top, double bottom, double told) {
        double x1 = days.px(from);
        double x2 = days.px(from.plusYears(1));
        if (shaded) {
            pen.box(x1, top, x2 - x1, bottom - top, pen.plain(Ink.SLATE_WASH), null);
        }
        pen.line(x1, top, x1, bottom, Stroke.of(Ink.RULE, 0.8));
        double middle = (x1 + x2) / 2;
        var name = name(from);
        double half = XmlText.widthPx(name, Pen.LETTER_PX) / 2;
        boolean fits =
                middle - told >= ROOM_PX * (name.length() > 4 ? 1.4 : 1)
                        && middle - half > namesFromPx
                        && days.holds(from.plusMonths(10));
        if (!fits) {
            return told;
        }
        pen.write(middle, top - 14, Pen.Anchor.MIDDLE, Ink.SOFT, name);
        return middle;
    }

    /** One year in the north, two in the south, where a season runs over New Year. */
    private String name(LocalDate from) {
        int year = from.getYear();
        return latitudeDegrees >= 0
                ? Integer.toString(year)
                : "%d/%02d".formatted(year, (year + 1) % 100);
    }
}
