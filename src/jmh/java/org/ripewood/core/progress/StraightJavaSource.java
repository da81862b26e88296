package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;

import java.util.List;

/** Writes rules as a Java class of plain ifs and constants, the way one might by hand. */
final class StraightJavaSource {

    private final StringBuilder source = new StringBuilder();

    private StraightJavaSource() {}

    static String of(String className, List<TechniqueText> techniques) {
        var writer = new StraightJavaSource();
        writer.line("import java.util.*;");
        writer.line("import org.ripewood.core.progress.*;");
        writer.line("public final class %s implements StraightJavaContender.Judge {", className);
        techniques.forEach(writer::technique);
        writer.line("public List<Outcome> judge(Sight s) {");
        writer.line("var outcomes = new ArrayList<Outcome>(%d);", techniques.size());
        writer.once("needed", techniques.stream().map(TechniqueText::needed).toList());
        writer.once("spared", techniques.stream().map(TechniqueText::notNeeded).toList());
        techniques.forEach(
                text -> writer.line("outcomes.add(judge%d(s, needed, spared));", text.place()));
        writer.line("return outcomes; } }");
        return writer.source.toString();
    }

    /** What many techniques ask is worked out once, as one would by hand. */
    private void once(String name, List<Bool> written) {
        line("boolean[] %s = {", name);
        written.forEach(each -> line("%s,", each));
        line("};");
    }

    private void technique(TechniqueText text) {
        settled(text, "ELSEWHERE", "NOT_NEEDED", "List.of(\"species\")");
        settled(text, "DONE", "DONE", "List.of()");
        settled(text, "SPARED", "NOT_NEEDED", "List.of(\"needed\")");
        line("private static Outcome judge%d(", text.place());
        line("Sight s, boolean[] needed, boolean[] spared) {");
        if (text.forSpecies()) {
            body(text);
        } else {
            line("return ELSEWHERE%d;", text.place());
        }
        line("}");
    }

    private void settled(TechniqueText text, String name, String verdict, String keys) {
        line(
                "private static final Outcome %s%d = new Outcome(\"%s\", Verdict.%s, %s);",
                name, text.place(), text.code(), verdict, keys);
    }

    private void body(TechniqueText text) {
        line("if (%s) { return DONE%d; }", text.done(), text.place());
        line("if (spared[%d]) { return SPARED%d; }", text.place(), text.place());
        text.locals().forEach((name, written) -> line("boolean %s = %s;", name, written));
        line("int truth = Outcome.YES;");
        line("var against = new ArrayList<String>();");
        text.checks().forEach(check -> check(check, "truth"));
        line("boolean skilled = %s;", text.skilled());
        line("if (!skilled) { against.add(\"skill\"); }");
        line("int season = Outcome.YES;");
        check(text.season(), "season");
        line("var verdict = Outcome.verdict(truth, skilled, season);");
        line("return new Outcome(\"%s\", verdict, against);", text.code());
    }

    private void check(Check check, String truth) {
        branch("if", check.known().not(), check.key(), truth + " = Math.min(%s, 1)", truth);
        branch("else if", check.met().not(), check.key(), truth + " = 0", truth);
        branch("else if", check.doubted(), check.key(), truth + " = Math.min(%s, 1)", truth);
    }

    private void branch(String word, Bool when, String key, String then, String truth) {
        line("%s (%s) { against.add(\"%s\"); %s; }", word, when, key, then.formatted(truth));
    }

    private void line(String format, Object... parts) {
        source.append(parts.length == 0 ? format : format.formatted(parts)).append('\n');
    }
}
