package org.ripewood.core.route;

/** When the windows of a draw are open: the usual days, moved as its years are early or late. */
final class WindowsOfDraw {

    private static final int YEAR_DAYS = 366;

    private final YearsAhead terrain;
    private final YearsOfDraw years;

    WindowsOfDraw(YearsAhead terrain, YearsOfDraw years) {
        this.terrain = terrain;
        this.years = years;
    }

    /**
     * The first open day from one on, or {@link YearsAhead#NEVER}.
     *
     * @param nextOpen the windows in usual years, as {@link YearsAhead#nextOpen} tells them
     */
    int open(int[] nextOpen, int from) {
        if (from >= terrain.days) {
            return YearsAhead.NEVER;
        }
        int usual = Math.max(0, from - years.shift(terrain.seasonOf(from)));
        int open = usual < terrain.days ? nextOpen[usual] : YearsAhead.NEVER;
        if (open == YearsAhead.NEVER) {
            return open;
        }
        int moved = Math.max(from, open + years.shift(terrain.seasonOf(open)));
        return moved < terrain.days ? moved : YearsAhead.NEVER;
    }

    /** The first day from an open one on that is shut; where none is for a year, a later day. */
    int shutAfter(int[] nextOpen, int open) {
        int usual = Math.max(0, open - years.shift(terrain.seasonOf(open)));
        int end = Math.min(terrain.days, usual + YEAR_DAYS);
        for (int day = usual; day < end; day++) {
            if (nextOpen[day] != day) {
                return open + day - usual;
            }
        }
        return open + YearsOfDraw.putOffDays();
    }

    /**
     * So many days after an open one when that is in the same window and growing season; else the
     * day itself.
     */
    int later(int[] nextOpen, int open, int days) {
        int day = open + days;
        boolean within = day < terrain.days && terrain.seasonOf(day) == terrain.seasonOf(open);
        int shift = within ? years.shift(terrain.seasonOf(open)) : 0;
        int usual = Math.max(0, day - shift);
        return within && usual < terrain.days && nextOpen[usual] == usual ? day : open;
    }
}
