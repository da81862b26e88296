package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Rubric;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescription.CodeKind;
import org.ripewood.platform.records.TableDescriptions;

/** What instructors judged. */
@ApplicationScoped
class AssessTables implements TableDescriptions {

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("skill_judgement")
                        .numbered()
                        .partOf("student_id", "person")
                        .about("student_id")
                        .code("lesson", CodeKind.LESSON)
                        .plain("shown", "judged_on")
                        .writtenBy("by_id")
                        .words("note")
                        .done(),
                // What a judgement became of a tree or a student is on their record by itself.
                // While
                // it is a draft, or waits for a second judge, nobody but its judge reads it.
                TableDescription.named("rubric_judgement")
                        .numbered()
                        .schoolOnly()
                        .sealedUntil("opened_at")
                        .code("rubric", CodeKind.RUBRIC)
                        .partOf("tree_id", "tree")
                        .refers("student_id", "person")
                        .about("student_id")
                        .writtenBy("by_id")
                        .plain("level_no", "judged_on")
                        .words("note")
                        .plain("kept_at", "content_revision", "signed_at", "opened_at")
                        .plain("second_wanted", "blind")
                        .refers("corrects", "rubric_judgement")
                        .refers("superseded_by", "rubric_judgement")
                        .refers("observation_id", "observation")
                        .version()
                        .leftOut("draft_of", "follows while it is a draft", AssessTables::draftOf)
                        .done());
    }

    /** As {@link Judgements} names a judge's one draft of a subject. */
    private static @Nullable Object draftOf(Map<String, @Nullable Object> row) {
        if (row.get("signed_at") != null) {
            return null;
        }
        var tree = row.get("tree_id");
        return "%s/%s/%s/%s"
                .formatted(
                        row.get("by_id"),
                        row.get("rubric"),
                        tree == null ? Rubric.Subject.STUDENT : Rubric.Subject.TREE,
                        tree == null ? row.get("student_id") : tree);
    }
}
