package org.ripewood.cases;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;

/** Tries folders of content by themselves: tells its faults and the cases that disagree. */
public final class ContentTrial {

    /** Nothing is wrong. */
    public static final int FINE = 0;

    /** The content has faults, or cases disagree. */
    public static final int WRONG = 1;

    /** The trial was asked for in a way it does not know. */
    public static final int MISUSED = 2;

    private static final String CHECK = "--check-content";
    private static final String CHECK_ADDED = "--check-added";

    private final PrintStream out;

    /**
     * @param out where it tells what it found
     */
    public ContentTrial(PrintStream out) {
        this.out = out;
    }

    /** Whether the first word behind the program asks for a trial. */
    public static boolean knows(String option) {
        return option.equals(CHECK) || option.equals(CHECK_ADDED);
    }

    /**
     * Tries folders.
     *
     * @param asked what was typed: the option, and its folders
     * @return what the program ends with
     */
    public int of(String... asked) {
        var words = List.of(asked);
        if (words.isEmpty() || !isWhole(words)) {
            out.printf(
                    "Expected --check-content and a folder with course content, then, if there is"
                            + " one, the folder laid over it; or --check-added and a folder laid"
                            + " over the content of the program. Found %d folders.%n"
                            + "Maybe --check-content course-content%n",
                    Math.max(0, words.size() - 1));
            return MISUSED;
        }
        var checked =
                words.get(0).equals(CHECK_ADDED)
                        ? CourseContent.check(null, Path.of(words.get(1)))
                        : CourseContent.check(
                                Path.of(words.get(1)),
                                words.size() == 3 ? Path.of(words.get(2)) : null);
        checked.faults().forEach(fault -> out.println(fault.told()));
        var content = checked.content();
        if (content == null) {
            out.printf("%d fault(s): no case was played.%n", checked.faults().size());
            return WRONG;
        }
        return play(content);
    }

    private static boolean isWhole(List<String> words) {
        int most = words.get(0).equals(CHECK) ? 2 : 1;
        int folders = words.size() - 1;
        return knows(words.get(0))
                && folders >= 1
                && folders <= most
                && words.stream().noneMatch(String::isBlank);
    }

    private int play(Content content) {
        var disagreeing = CaseRun.disagreeing(content);
        disagreeing.forEach(outcome -> out.println(outcome.told()));
        out.printf(
                "Course content %s%s: no faults; %d of %d cases disagree.%n",
                content.revision(), laidOver(content), disagreeing.size(), content.cases().size());
        return disagreeing.isEmpty() ? FINE : WRONG;
    }

    private static String laidOver(Content content) {
        int files = content.ofSchool().size();
        return files == 0 ? "" : ", %d file(s) of it laid over".formatted(files);
    }
}
