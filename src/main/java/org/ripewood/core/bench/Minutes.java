package org.ripewood.core.bench;

import java.util.Arrays;

/** A set of minutes, counted from 0. */
final class Minutes {

    private final int length;
    private final long[] words;

    Minutes(int length) {
        this.length = length;
        this.words = new long[(length >> 6) + 1];
    }

    void clear() {
        Arrays.fill(words, 0);
    }

    void copyFrom(Minutes other) {
        System.arraycopy(other.words, 0, words, 0, words.length);
    }

    boolean holds(int minute) {
        return (words[minute >> 6] & 1L << minute) != 0;
    }

    void add(int minute) {
        words[minute >> 6] |= 1L << minute;
    }

    void remove(int minute) {
        words[minute >> 6] &= ~(1L << minute);
    }

    void add(int from, int to) {
        int word = from >> 6;
        int last = (to - 1) >> 6;
        long head = -1L << from;
        long tail = -1L >>> -to;
        if (word == last) {
            words[word] |= head & tail;
            return;
        }
        words[word] |= head;
        while (++word < last) {
            words[word] = -1L;
        }
        words[last] |= tail;
    }

    void remove(int from, int to) {
        int word = from >> 6;
        int last = (to - 1) >> 6;
        long head = -1L << from;
        long tail = -1L >>> -to;
        if (word == last) {
            words[word] &= ~(head & tail);
            return;
        }
        words[word] &= ~head;
        while (++word < last) {
            words[word] = 0;
        }
        words[last] &= ~tail;
    }

    /** The first minute in the set from one on; the set's length where there is none. */
    int next(int from) {
        if (from >= length) {
            return length;
        }
        int word = from >> 6;
        long bits = words[word] & -1L << from;
        while (bits == 0) {
            if (++word == words.length) {
                return length;
            }
            bits = words[word];
        }
        return Math.min(length, (word << 6) + Long.numberOfTrailingZeros(bits));
    }

    /** The last minute in the set from {@code from} to before {@code to}; -1 where none is. */
    private int last(int from, int to) {
        int word = (to - 1) >> 6;
        long bits = words[word] & -1L >>> -to;
        int first = from >> 6;
        while (bits == 0) {
            if (--word < first) {
                return -1;
            }
            bits = words[word];
        }
        int found = (word << 6) + 63 - Long.numberOfLeadingZeros(bits);
        return found < from ? -1 : found;
    }

    /**
     * The first minute from one on that begins so many minutes outside the set; past the end where
     * they would not fit.
     */
    int nextGap(int from, int minutes) {
        int start = from;
        while (start + minutes <= length) {
            int taken = minutes == 0 ? -1 : last(start, start + minutes);
            if (taken < 0) {
                return start;
            }
            start = taken + 1;
        }
        return length + 1;
    }
}
