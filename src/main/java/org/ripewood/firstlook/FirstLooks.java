package org.ripewood.firstlook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Arrays;
import org.ripewood.core.progress.Source;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TreeLook;
import org.ripewood.trees.TreeDays;

/** The first look at trees within reach; who may record observations of a tree may answer. */
@ApplicationScoped
@Transactional
public class FirstLooks {

    private final Standings standings;
    private final TreeDays treeDays;
    private final LookBook book;

    FirstLooks(Standings standings, TreeDays treeDays, LookBook book) {
        this.standings = standings;
        this.treeDays = treeDays;
        this.book = book;
    }

    /** A tree as it stands today, and what is still to be asked of it; 404 out of reach. */
    public Look look(Actor actor, long treeId, Walk walk) {
        var look = standings.look(actor, treeId, treeDays.at(treeId));
        var eye = actor.is(Role.INSTRUCTOR) ? Source.INSTRUCTOR : Source.STUDENT;
        return new Look(look, FirstLook.of(look.day(), eye, walk));
    }

    /** Tree and first look, read once. */
    public record Look(TreeLook tree, FirstLook first) {}

    /**
     * Records an answer, all of it or nothing, as of today at the tree's site.
     *
     * @throws OddLook when it looks odd and nobody said yet that it is so
     * @throws Refused 400 naming the fields that cannot be taken, 404 out of reach, 409 when the
     *     tree left the school
     */
    public void answer(Actor actor, long treeId, NewLook look) {
        book.record(actor, treeId, question(look.question()), look, treeDays.at(treeId));
    }

    /**
     * The question of a code.
     *
     * @throws Refused 400 when there is none
     */
    public static LookQuestion question(String code) {
        return LookQuestion.find(code)
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        "question",
                                        "there is no question “%s”.%s"
                                                .formatted(
                                                        code,
                                                        Suggestion.maybe(
                                                                Arrays.stream(LookQuestion.values())
                                                                        .map(LookQuestion::code)
                                                                        .toList(),
                                                                code))));
    }
}
