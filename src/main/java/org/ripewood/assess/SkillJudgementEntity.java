package org.ripewood.assess;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Never edited: a later judgement outweighs an earlier one. */
@Entity
@Table(name = "skill_judgement")
class SkillJudgementEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "skill_judgement_seq")
    @SequenceGenerator(
            name = "skill_judgement_seq",
            sequenceName = "skill_judgement_seq",
            allocationSize = 50)
    @Nullable Long id;

    long studentId;
    String lesson;
    boolean shown;
    LocalDate judgedOn;
    long byId;
    @Nullable String note;

    SkillJudgement told() {
        return new SkillJudgement(
                requireNonNull(id), studentId, lesson, shown, judgedOn, byId, note);
    }
}
