package org.ripewood.firstlook;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One walk round a tree: what was answered in it, and what nobody could say. It is remembered for
 * this walk only, in the addresses of its pages.
 */
public record Walk(Set<LookQuestion> answered, Set<LookQuestion> skipped) {

    /** One that begins. */
    public static final Walk NEW = new Walk(Set.of(), Set.of());

    private static final String BETWEEN = ",";

    public Walk {
        answered = Set.copyOf(answered);
        skipped = Set.copyOf(skipped);
    }

    /**
     * A walk from codes in an address; what names no question is let pass.
     *
     * @param answered codes with commas between
     * @param skipped likewise
     */
    public static Walk of(String answered, String skipped) {
        return new Walk(read(answered), read(skipped));
    }

    private static Set<LookQuestion> read(String codes) {
        return Arrays.stream(codes.split(BETWEEN, -1))
                .flatMap(code -> LookQuestion.find(code).stream())
                .collect(Collectors.toSet());
    }

    /** The same after an answer. */
    public Walk with(LookQuestion question) {
        return new Walk(plus(answered, question), minus(skipped, question));
    }

    /** The same where nobody can say. */
    public Walk without(LookQuestion question) {
        return new Walk(minus(answered, question), plus(skipped, question));
    }

    /** Whether it came by already. */
    public boolean passed(LookQuestion question) {
        return answered.contains(question) || skipped.contains(question);
    }

    /** How many questions it came by. */
    public int length() {
        return answered.size() + skipped.size();
    }

    public String answeredCodes() {
        return codes(answered);
    }

    public String skippedCodes() {
        return codes(skipped);
    }

    private static String codes(Collection<LookQuestion> questions) {
        return questions.stream()
                .sorted()
                .map(LookQuestion::code)
                .collect(Collectors.joining(BETWEEN));
    }

    private static Set<LookQuestion> plus(Set<LookQuestion> some, LookQuestion one) {
        var more = new LinkedHashSet<>(some);
        more.add(one);
        return more;
    }

    private static Set<LookQuestion> minus(Set<LookQuestion> some, LookQuestion one) {
        var fewer = new LinkedHashSet<>(some);
        fewer.remove(one);
        return fewer;
    }
}
