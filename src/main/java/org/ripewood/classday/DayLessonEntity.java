package org.ripewood.classday;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

/** When the lesson of a class day is held, as an instructor wishes it. */
@Entity
@Table(name = "day_lesson")
class DayLessonEntity {

    @Id long sessionId;

    /** Null for as early as the day begins. */
    @Nullable Integer fromMinute;

    /** Null for as long as the lesson takes; 0 for no lesson for all. */
    @Nullable Integer minutes;
}
