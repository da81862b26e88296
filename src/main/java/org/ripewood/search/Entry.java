package org.ripewood.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A thing with the words it is found by.
 *
 * @param title words of its name, and all of them written as one
 * @param other words of other names and of what belongs to it
 * @param deep words of its text, found by their beginnings only and told last
 */
record Entry(Hit hit, List<String> title, List<String> other, Set<String> deep) {

    /** So many times worse than one place is another that the worst word decides little. */
    private static final int NOT = 100;

    private static final int WHOLE = 0;
    private static final int BEGINS = 1;
    private static final int WITHIN = 2;
    private static final int OTHER_BEGINS = 3;
    private static final int OTHER_WITHIN = 4;
    private static final int DEEP = 6;

    /** Fewer letters are in every other word. */
    private static final int LEAST_WITHIN = 3;

    private static final int LEAST_DEEP = 4;

    static Entry of(Hit hit, List<String> others, List<String> texts) {
        var deep = new LinkedHashSet<String>();
        texts.forEach(text -> deep.addAll(Letters.words(text)));
        var other = new ArrayList<String>();
        others.forEach(text -> other.addAll(withWhole(text)));
        return new Entry(hit, withWhole(hit.title()), other, deep);
    }

    private static List<String> withWhole(String text) {
        var words = new ArrayList<>(Letters.words(text));
        if (words.size() > 1) {
            words.add(String.join("", words));
        }
        return words;
    }

    /**
     * How well it answers to the words, which must all be found in it: 0 best; negative when one is
     * not.
     */
    int rank(List<String> asked) {
        int sum = 0;
        for (var word : asked) {
            int rank = rank(word);
            if (rank == NOT) {
                return -1;
            }
            sum += rank;
        }
        return sum;
    }

    private int rank(String word) {
        if (title.contains(word)) {
            return WHOLE;
        }
        if (begins(title, word)) {
            return BEGINS;
        }
        if (within(title, word)) {
            return WITHIN;
        }
        if (begins(other, word)) {
            return OTHER_BEGINS;
        }
        if (within(other, word)) {
            return OTHER_WITHIN;
        }
        return word.length() >= LEAST_DEEP && deep.stream().anyMatch(one -> one.startsWith(word))
                ? DEEP
                : NOT;
    }

    private static boolean begins(List<String> words, String asked) {
        return words.stream().anyMatch(word -> word.startsWith(asked));
    }

    private static boolean within(List<String> words, String asked) {
        return asked.length() >= LEAST_WITHIN
                && words.stream().anyMatch(word -> word.contains(asked));
    }
}
