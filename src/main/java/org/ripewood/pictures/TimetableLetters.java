package org.ripewood.pictures;

/**
 * How large things of a timetable are, in px of the view box.
 *
 * @param namePx letters of trees and instructors
 * @param workPx letters of students, work and hours
 */
record TimetableLetters(boolean narrow, double namePx, double workPx) {

    /** From this width on a sheet of paper is read at arm's length. */
    private static final int LARGE_PX = 900;

    /**
     * A large sheet of paper is printed at most 980 px wide, on US Letter lying on its side 0.727
     * pt to the px: names of 19.5 px are 14 pt, work of 16.6 px is 12 pt.
     */
    static TimetableLetters of(Sheet sheet) {
        return sheet.paper() && sheet.widthPx() >= LARGE_PX
                ? new TimetableLetters(false, 19.5, 16.6)
                : new TimetableLetters(sheet.narrow(), 13.5, 13);
    }

    double boxPx() {
        return workPx * 1.15;
    }

    /** From the top of a row to its boxes. */
    double boxOffsetPx() {
        return narrow ? namePx + 5 : workPx + 4;
    }

    double benchRowPx() {
        return boxOffsetPx() + boxPx() + 4;
    }

    /** From the top of an instructor's row to its boxes. */
    double instructorBoxPx() {
        return narrow ? namePx + 5 : 2;
    }

    double instructorRowPx() {
        return instructorBoxPx() + boxPx() + 6;
    }
}
