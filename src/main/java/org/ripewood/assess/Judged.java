package org.ripewood.assess;

import org.ripewood.course.Rubric;

/**
 * What a judgement is of.
 *
 * @param subject a tree or a student
 * @param id the tree's or the student's
 */
public record Judged(Rubric.Subject subject, long id) {

    public static Judged tree(long treeId) {
        return new Judged(Rubric.Subject.TREE, treeId);
    }

    public static Judged student(long personId) {
        return new Judged(Rubric.Subject.STUDENT, personId);
    }

    /** The field of the stored judgement that holds the id. */
    String column() {
        return isTree() ? "treeId" : "studentId";
    }

    boolean isTree() {
        return subject == Rubric.Subject.TREE;
    }
}
