package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.passwords.Secret;
import org.ripewood.people.Person;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * Tokens by which a person's programs use the API in their name. A token never does more than its
 * owner may at that moment, and is told once.
 *
 * <p>A change of password leaves them: programs know no password, and a school's weather station
 * should not fall silent by it. A password chosen by link ends them, since then somebody else may
 * have had the account.
 */
@ApplicationScoped
@Transactional
public class ApiTokens {

    /** Whoever needs more has lost count of them (our own choice). */
    static final int MOST = 20;

    private final ApiTokenRows rows;
    private final PersonRows persons;
    private final Audit audit;
    private final Today today;

    ApiTokens(ApiTokenRows rows, PersonRows persons, Audit audit, Today today) {
        this.audit = audit;
        this.rows = rows;
        this.persons = persons;
        this.today = today;
    }

    /** Whose request a token makes, and how far it goes. */
    record Bearer(Person person, boolean writes) {}

    /** A token that was made, with its secret, which is told here only. */
    public record Made(ApiToken token, String secret) {}

    /** The actor's tokens, the latest first; those that ran out are told as well. */
    public List<ApiToken> of(Actor actor) {
        return rows.of(actor.personId()).stream().map(ApiTokenEntity::toRecord).toList();
    }

    /** Makes the actor a token. */
    public Made make(Actor actor, NewApiToken wanted) {
        if (rows.count("personId", actor.personId()) >= MOST) {
            throw Refused.conflict(
                    "You have %d tokens, which is the most.".formatted(MOST),
                    "Maybe end one that is no longer needed.");
        }
        var token = new ApiTokenEntity();
        var secret = Secret.fresh();
        token.personId = actor.personId();
        token.name = wanted.name().strip();
        token.scope = wanted.scope();
        token.secretHash = Secret.hash(secret);
        token.madeAt = today.now();
        token.lastDay = today.date().plusDays(wanted.days());
        rows.persistAndFlush(token);
        audit.note(Deed.TOKEN_MADE, null);
        return new Made(token.toRecord(), secret);
    }

    /** Ends a token of the actor's; 404 when they have no such one. */
    public void end(Actor actor, long tokenId) {
        var token =
                rows.findByIdOptional(tokenId)
                        .filter(found -> found.personId == actor.personId())
                        .orElseThrow(() -> Refused.notFound("token", tokenId));
        rows.delete(token);
        audit.note(Deed.TOKEN_ENDED, null);
    }

    /** Whose token it is; nobody's when it ran out or its owner is no longer active. */
    Optional<Bearer> find(String secret) {
        var day = today.date();
        var token = rows.bySecret(secret, day);
        var bearer =
                token.map(
                                found ->
                                        new Bearer(
                                                persons.require(found.personId).toRecord(),
                                                found.scope == ApiToken.Scope.READ_AND_WRITE))
                        .filter(found -> found.person().active());
        bearer.ifPresent(found -> rows.used(token.orElseThrow(), day));
        return bearer;
    }
}
