package org.ripewood.cases;

import java.util.List;
import org.ripewood.core.progress.Verdict;

/**
 * How a case came out.
 *
 * @param code topic and name of the case
 * @param file of the content, and {@code line} in it
 * @param technique title of the technique asked for
 * @param expected verdicts the teacher accepts
 * @param against what the rules have against it, in sentences
 * @param differences what is not as the teacher says; empty when all is
 * @param why the teacher's reason
 */
public record CaseOutcome(
        String code,
        String title,
        String file,
        int line,
        String technique,
        List<Verdict> expected,
        Verdict found,
        List<String> against,
        List<String> differences,
        String why) {

    public CaseOutcome {
        expected = List.copyOf(expected);
        against = List.copyOf(against);
        differences = List.copyOf(differences);
    }

    public boolean disagrees() {
        return !differences.isEmpty();
    }

    /** The case and what is not as its teacher says, in lines of text. */
    public String told() {
        var told = new StringBuilder();
        told.append("%s:%d: %s: %s (%s)".formatted(file, line, code, title, technique));
        differences.forEach(difference -> told.append("\n    ").append(difference));
        against.forEach(reason -> told.append("\n    against it: ").append(reason));
        return told.append("\n    the teacher's reason: ").append(why).toString();
    }
}
