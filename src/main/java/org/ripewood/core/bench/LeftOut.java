package org.ripewood.core.bench;

import java.util.Set;

/** A job that is not on the timetable, or not to its end, and why. */
public record LeftOut(String job, Reason reason) {

    /** Why there is no place for it. */
    public sealed interface Reason {}

    /** The student is not there. */
    public record Absent(String student) implements Reason {}

    /** None of this tool is there. */
    public record NoTool(String tool) implements Reason {}

    /**
     * Nobody who may stand by teaches on the day, or what is left of it.
     *
     * @param wanted who may; empty for anybody
     */
    public record NoInstructor(Set<String> wanted) implements Reason {}

    /**
     * It would not fit even were it the only job of the day.
     *
     * @param minutes of work it has left
     * @param fromMinute when it could begin
     * @param toMinute when the day ends
     */
    public record DayTooShort(int minutes, int fromMinute, int toMinute) implements Reason {}

    /**
     * No plan was found that does it without leaving out another that comes first.
     *
     * @param proved whether it is sure that there is none
     * @param instructorMinutes it asks for
     * @param instructorMinutesLeft that nobody else uses, over all instructors and gaps
     */
    public record NoRoom(boolean proved, int instructorMinutes, int instructorMinutesLeft)
            implements Reason {}
}
