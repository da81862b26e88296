package org.ripewood.cases;

import java.io.PrintStream;
import java.nio.file.Path;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;

/** Tries a folder of content by itself: tells its faults and the cases that disagree. */
public final class ContentTrial {

    /** Nothing is wrong. */
    public static final int FINE = 0;

    /** The content has faults, or cases disagree. */
    public static final int WRONG = 1;

    /** The trial was asked for in a way it does not know. */
    public static final int MISUSED = 2;

    private final PrintStream out;

    /**
     * @param out where it tells what it found
     */
    public ContentTrial(PrintStream out) {
        this.out = out;
    }

    /**
     * Tries a folder.
     *
     * @param folders what was typed behind the option: one folder
     * @return what the program ends with
     */
    public int of(String... folders) {
        if (folders.length != 1 || folders[0].isBlank()) {
            out.printf(
                    "Expected --check-content and one folder with course content; found %d"
                            + " folders.%nMaybe --check-content course-content%n",
                    folders.length);
            return MISUSED;
        }
        var checked = CourseContent.check(Path.of(folders[0]));
        checked.faults().forEach(fault -> out.println(fault.told()));
        var content = checked.content();
        if (content == null) {
            out.printf("%d fault(s): no case was played.%n", checked.faults().size());
            return WRONG;
        }
        return play(content);
    }

    private int play(Content content) {
        var disagreeing = CaseRun.disagreeing(content);
        disagreeing.forEach(outcome -> out.println(outcome.told()));
        out.printf(
                "Course content %s: no faults; %d of %d cases disagree.%n",
                content.revision(), disagreeing.size(), content.cases().size());
        return disagreeing.isEmpty() ? FINE : WRONG;
    }
}
