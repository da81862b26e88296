package org.ripewood.web.firstlook;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.firstlook.FirstLook;
import org.ripewood.firstlook.HowToLook;
import org.ripewood.firstlook.LookAge;
import org.ripewood.firstlook.LookAnswer;
import org.ripewood.firstlook.LookQuestion;
import org.ripewood.firstlook.Walk;
import org.ripewood.pictures.AnswerPicture;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * What a page of the first look shows.
 *
 * @param question the question of this screen; null on the last screen
 * @param told what the answer before recorded and changed; empty for nothing
 */
public record FirstLookPageModel(
        Tree tree, FirstLook look, @Nullable LookQuestion question, String told, FormState typed) {

    /** An answer with its picture. */
    public record Drawn(LookAnswer answer, String svg) {}

    public List<Drawn> drawn() {
        var asked = question;
        return asked == null
                ? List.of()
                : asked.answers().stream()
                        .map(answer -> new Drawn(answer, svg(asked, answer)))
                        .toList();
    }

    private static String svg(LookQuestion question, LookAnswer answer) {
        return AnswerPicture.of(question.code(), answer.code(), answer.label())
                .map(picture -> picture.svg())
                .orElse("");
    }

    public List<LookAge> ages() {
        return Arrays.asList(LookAge.values());
    }

    /** How to look at this tree; empty on the last screen. */
    public String how() {
        return question == null ? "" : HowToLook.of(question, look.tree());
    }

    /** {@code "3 of 11"}; empty for a question that is answered once more. */
    public String progress() {
        return question == null || look.walk().passed(question)
                ? ""
                : "Question %d of %d"
                        .formatted(
                                look.walk().length() + 1,
                                look.walk().length() + look.open().size());
    }

    /** How far the walk has come, for a bar that says the same. */
    public int total() {
        return look.walk().length() + look.open().size();
    }

    /** The question to go back to; null on the first screen. */
    public @Nullable LookQuestion back() {
        return Arrays.stream(LookQuestion.values())
                .filter(look.walk()::passed)
                .filter(passed -> question == null || passed.compareTo(question) < 0)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    /** This walk's address, the next open question or the end of it. */
    public String here() {
        return path(look.walk());
    }

    /** Where to go on when nobody can say. */
    public String unknown() {
        return question == null ? here() : path(look.walk().without(question));
    }

    private String path(Walk walk) {
        return address(tree.id(), walk);
    }

    /** A walk's address; codes are letters and commas, which need no escaping. */
    static String address(long treeId, Walk walk) {
        return "/trees/%d/first-look?answered=%s&skipped=%s"
                .formatted(treeId, walk.answeredCodes(), walk.skippedCodes());
    }

    public boolean lengths() {
        return question != null && !question.numbers().isEmpty();
    }
}
