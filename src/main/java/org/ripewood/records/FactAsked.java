package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;

/** Which fact an entry is of, and whether it says where it was read as the fact needs. */
@ApplicationScoped
class FactAsked {

    private static final double HIGHEST_MM = 5000;
    private static final List<String> RECORDABLE =
            Arrays.stream(Fact.values()).filter(Fact::recordable).map(Fact::code).toList();

    private final WoundRows wounds;
    private final BranchRows branches;

    FactAsked(WoundRows wounds, BranchRows branches) {
        this.wounds = wounds;
        this.branches = branches;
    }

    /** The fact of a code, when this person may record it. */
    Fact fact(Actor actor, String code) {
        var fact =
                Fact.find(code.strip())
                        .orElseThrow(
                                () ->
                                        Refused.invalid(
                                                "fact",
                                                "there is no fact “%s”.%s"
                                                        .formatted(
                                                                code,
                                                                Suggestion.maybe(
                                                                        RECORDABLE, code))));
        if (!fact.recordable()) {
            throw Refused.invalid(
                    "fact",
                    "%s is worked out from the record and not recorded by hand"
                            .formatted(fact.code()));
        }
        if (fact.instructorsWord() && !actor.is(Role.INSTRUCTOR)) {
            throw Refused.forbidden(
                    "Only an instructor may judge %s as a whole; record what it is worked out from."
                            .formatted(fact.code()));
        }
        return fact;
    }

    /** A reason, where the fact is not said without one. */
    static void requireReason(Fact fact, @Nullable String note) {
        if (fact.asksForReason() && (note == null || note.isBlank())) {
            throw Refused.invalid(
                    "note",
                    "expected the reason why, which %s is not said without; found nothing"
                            .formatted(fact.code()));
        }
    }

    /** Wound, branch and height: the one the fact is read on, and no other. */
    void requirePlace(Fact fact, long treeId, NewObservation seen) {
        requireOnly(fact, Fact.Scope.WOUND, "woundId", seen.woundId());
        requireOnly(fact, Fact.Scope.BRANCH, "branchId", seen.branchId());
        requireOnly(fact, Fact.Scope.HEIGHT, "heightMm", seen.heightMm());
        if (seen.woundId() != null) {
            requireWound(treeId, seen.woundId(), seen);
        }
        if (seen.branchId() != null) {
            requireBranch(treeId, seen.branchId(), seen);
        }
        if (seen.heightMm() != null && !(seen.heightMm() >= 0 && seen.heightMm() <= HIGHEST_MM)) {
            throw Refused.invalid("heightMm", "expected 0 to 5000 mm, found " + seen.heightMm());
        }
    }

    private static void requireOnly(
            Fact fact, Fact.Scope scope, String field, @Nullable Object given) {
        if (fact.scope() == scope && given == null) {
            throw Refused.invalid(
                    field, "%s needs to be told where it was read".formatted(fact.code()));
        }
        if (fact.scope() != scope && given != null) {
            throw Refused.invalid(
                    field, "%s is not read there; leave it out".formatted(fact.code()));
        }
    }

    private void requireWound(long treeId, long woundId, NewObservation seen) {
        var wound = wounds.findById(woundId);
        if (wound == null || wound.treeId != treeId) {
            throw Refused.invalid("woundId", "this tree has no wound " + woundId);
        }
        if (seen.observedOn().isBefore(wound.madeOn)) {
            throw Refused.invalid(
                    "observedOn",
                    "the wound was made on %s; found %s"
                            .formatted(wound.madeOn, seen.observedOn()));
        }
    }

    private void requireBranch(long treeId, long branchId, NewObservation seen) {
        var branch = branches.findById(branchId);
        if (branch == null || branch.treeId != treeId) {
            throw Refused.invalid("branchId", "this tree has no branch " + branchId);
        }
        if (branch.removedOn != null && seen.observedOn().isAfter(branch.removedOn)) {
            throw Refused.invalid(
                    "observedOn",
                    "the branch was taken off on %s; found %s"
                            .formatted(branch.removedOn, seen.observedOn()));
        }
    }
}
