package org.ripewood.pictures;

/**
 * Values laid along a line.
 *
 * <p>Values are held within ±1e12 and within the line, so that no value, however absurd, leaves the
 * sheet.
 */
record Scale(double from, double to, double startPx, double endPx) {

    private static final double MOST = 1e12;

    Scale {
        from = held(from);
        to = held(to);
        if (!(to - from > 1e-9)) {
            to = from + 1;
        }
    }

    private static double held(double value) {
        return Double.isNaN(value) ? 0 : Math.max(-MOST, Math.min(MOST, value));
    }

    double px(double value) {
        double share = (held(value) - from) / (to - from);
        return startPx + Math.max(0, Math.min(1, share)) * (endPx - startPx);
    }

    /** Round values at most this many, each step 1, 2 or 5 times a power of ten. */
    double[] marks(int most) {
        double step = Math.pow(10, Math.floor(Math.log10((to - from) / most)));
        double[] times = {1, 2, 5, 10, 20};
        int next = 0;
        while (next < times.length - 1 && count(step * times[next]) > most) {
            next++;
        }
        double chosen = step * times[next];
        double first = Math.ceil(from / chosen - 1e-9);
        var marks = new double[(int) count(chosen)];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = (first + i) * chosen;
        }
        return marks;
    }

    private double count(double step) {
        return Math.floor(to / step + 1e-9) - Math.ceil(from / step - 1e-9) + 1;
    }
}
