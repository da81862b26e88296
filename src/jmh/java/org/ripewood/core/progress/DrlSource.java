package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes rules as DRL: a rule for each way a reason can speak against a technique.
 *
 * <p>Each asks one pattern, the tree on the day, so that the whole is an alpha network without a
 * join; what rules of a technique share is written alike, so that its nodes are shared.
 */
final class DrlSource {

    private final StringBuilder source = new StringBuilder();

    private DrlSource() {}

    static String of(String packageName, List<TechniqueText> techniques) {
        var writer = new DrlSource();
        writer.line("package %s;", packageName);
        writer.line("import org.ripewood.core.progress.Sight;");
        writer.line("import org.ripewood.core.progress.Tally;");
        writer.line("dialect \"java\"");
        writer.line("global Tally tally;");
        techniques.forEach(writer::technique);
        return writer.source.toString();
    }

    private void technique(TechniqueText text) {
        if (!text.forSpecies()) {
            rule(text, "species", List.of(), "notNeeded(%d, \"species\")", text.place());
            return;
        }
        var due = text.done().not();
        var open = List.of(due, text.notNeeded().not());
        rule(text, "done", List.of(text.done()), "done(%d)", text.place());
        var spared = List.of(due, text.notNeeded());
        rule(text, "not needed", spared, "notNeeded(%d, \"needed\")", text.place());
        for (var check : text.checks()) {
            reason(text, open, check, "check(%d, \"%s\", ".formatted(text.place(), check.key()));
        }
        reason(text, open, text.season(), "season(%d, ".formatted(text.place()));
        rule(text, "skill", and(open, text.skilled().not()), "unskilled(%d)", text.place());
    }

    private void reason(TechniqueText text, List<Bool> open, Check check, String then) {
        var known = and(open, check.known());
        rule(text, check.key() + " unknown", and(open, check.known().not()), then + "1)");
        rule(text, check.key() + " not met", and(known, check.met().not()), then + "0)");
        var doubted = and(known, check.met(), check.doubted());
        rule(text, check.key() + " doubted", doubted, then + "1)");
    }

    /** What always holds is left out, and so is a rule that can never fire. */
    private void rule(
            TechniqueText text, String name, List<Bool> when, String then, Object... parts) {
        var kept = when.stream().filter(part -> !part.equals(Bool.TRUE)).toList();
        if (!kept.contains(Bool.FALSE)) {
            line(
                    "rule \"%s %s\" when Sight(%s) then tally.%s; end",
                    text.code(),
                    name,
                    kept.stream().map(DrlSource::written).collect(Collectors.joining(", ")),
                    parts.length == 0 ? then : then.formatted(parts));
        }
    }

    /** Parts that must all hold are constraints of their own, so that rules share their nodes. */
    private static String written(Bool part) {
        return part instanceof Bool.All all
                ? all.parts().stream().map(Bool::toString).collect(Collectors.joining(", "))
                : part.toString();
    }

    private static List<Bool> and(List<Bool> some, Bool... more) {
        return Stream.concat(some.stream(), Stream.of(more)).toList();
    }

    private void line(String format, Object... parts) {
        source.append(parts.length == 0 ? format : format.formatted(parts)).append('\n');
    }
}
