package org.ripewood.secondfactor;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Change;
import org.ripewood.audit.Deed;
import org.ripewood.people.Person;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * A second factor beside the password: codes that an app of the person's makes, and a printed sheet
 * for when the app is lost. Whoever has it on signs in with both.
 */
@ApplicationScoped
@Transactional
public class SecondFactors {

    private static final Logger LOG = Logger.getLogger(SecondFactors.class);

    private static final String APP = "Ripewood";

    private final SecondFactorRows rows;
    private final RecoverySheets sheets;
    private final SealedSecrets sealed;
    private final PersonRows persons;
    private final Audit audit;
    private final Today today;
    private final SecondFactorFor wanted;

    SecondFactors(
            SecondFactorRows rows,
            RecoverySheets sheets,
            SealedSecrets sealed,
            PersonRows persons,
            Audit audit,
            Today today,
            @ConfigProperty(name = "ripewood.second-factor-for") SecondFactorFor wanted) {
        this.rows = rows;
        this.sheets = sheets;
        this.sealed = sealed;
        this.persons = persons;
        this.audit = audit;
        this.today = today;
        this.wanted = wanted;
    }

    /**
     * A secret for the actor's app, told here only.
     *
     * @param address by which an app takes it from a QR code
     */
    public record Begun(String secret, String address) {

        /** In groups, to be typed. */
        public String grouped() {
            return secret.replaceAll("(.{4})(?=.)", "$1 ");
        }
    }

    /** How the actor's second factor stands. */
    public SecondFactor of(Actor actor) {
        var person = persons.require(actor.personId()).toRecord();
        return new SecondFactor(
                rows.on(person.id()).map(factor -> factor.onSince).orElse(null),
                sheets.left(person.id()),
                wanted.includes(person));
    }

    /** Makes the actor a secret for their app, in place of one that is not on yet. */
    public Begun begin(Actor actor) {
        requireNone(actor);
        var factor = rows.findById(actor.personId());
        if (factor == null) {
            factor = new SecondFactorEntity();
            factor.personId = actor.personId();
        }
        var secret = AppCodes.freshSecret();
        factor.sealedSecret = sealed.seal(actor.personId(), secret);
        factor.lastStep = 0;
        rows.persist(factor);
        return begun(actor, secret);
    }

    /** The secret that was begun, to be shown once more while its first code is waited for. */
    public Begun begun(Actor actor) {
        requireNone(actor);
        return begun(actor, secret(required(actor)));
    }

    private Begun begun(Actor actor, byte[] secret) {
        var login = persons.require(actor.personId()).login;
        var text = Base32.encode(secret);
        // the parameters left out are those every app takes for granted
        var address =
                "otpauth://totp/%s:%s?secret=%s&issuer=%s"
                        .formatted(
                                APP, URLEncoder.encode(login, StandardCharsets.UTF_8), text, APP);
        return new Begun(text, address);
    }

    /**
     * Turns the actor's second factor on by a first code of their app.
     *
     * @return the codes of their sheet, told here only
     * @throws Refused 400 for a code that is not the app's of now
     */
    public List<String> turnOn(Actor actor, String code) {
        requireNone(actor);
        var factor = required(actor);
        var step = AppCodes.stepOf(secret(factor), digits(code), today.moment(), 0);
        if (step.isEmpty()) {
            throw Refused.invalid(
                    "code",
                    "expected the code that your app shows now, found another. Maybe the phone's"
                            + " clock is wrong; let it set itself");
        }
        factor.lastStep = step.getAsLong();
        factor.onSince = today.now();
        audit.note(Deed.SECOND_FACTOR_ON, null);
        return sheets.make(actor.personId());
    }

    /** Makes the actor another sheet; the one before is worth nothing any more. */
    public List<String> newSheet(Actor actor) {
        requireOn(actor);
        audit.note(Deed.RECOVERY_SHEET_MADE, null);
        return sheets.make(actor.personId());
    }

    /** Turns the actor's second factor off; 409 when the school wants them to have one. */
    public void turnOff(Actor actor) {
        requireOn(actor);
        if (wanted.includes(persons.require(actor.personId()).toRecord())) {
            throw Refused.conflict(
                    "The school wants you to have a second factor.",
                    "Maybe set it up anew after a registrar has reset it.");
        }
        forget(actor.personId());
        audit.note(Deed.SECOND_FACTOR_OFF, null);
    }

    /**
     * Takes the second factor from somebody who lost app and sheet, so that their password is
     * enough again; registrars only, and never for themselves.
     */
    public void reset(Actor actor, long personId) {
        actor.require(Role.REGISTRAR, "reset a second factor");
        persons.require(personId);
        if (actor.personId() == personId) {
            throw Refused.conflict(
                    "You cannot reset your own second factor.",
                    "Maybe another registrar can do it, or turn it off on your account page.");
        }
        if (rows.on(personId).isEmpty()) {
            throw Refused.conflict(
                    "They have no second factor.", "Maybe they lost their password instead.");
        }
        forget(personId);
        audit.note(Deed.SECOND_FACTOR_RESET, null);
        audit.noteRow("person", Change.Kind.CHANGED, personId);
    }

    /** The same by whoever runs the service; false when there is nothing to take. */
    boolean rescue(String login) {
        var person = persons.byLogin(login).filter(found -> isOn(found.id));
        person.ifPresent(
                found -> {
                    forget(found.id);
                    audit.note(Deed.SECOND_FACTOR_RESET, null);
                    audit.noteRow("person", Change.Kind.CHANGED, found.id);
                });
        return person.isPresent();
    }

    /** Those of the persons who have one; registrars only. */
    public Set<Long> among(Actor actor, Collection<Long> personIds) {
        actor.require(Role.REGISTRAR, "see who has a second factor");
        return personIds.isEmpty()
                ? Set.of()
                : rows.list("personId in ?1 and onSince is not null", personIds).stream()
                        .map(factor -> factor.personId)
                        .collect(Collectors.toSet());
    }

    public boolean isOn(long personId) {
        return rows.on(personId).isPresent();
    }

    /** Whether the person has to set one up before anything else. */
    public boolean isMissing(Person person) {
        return wanted.includes(person) && !isOn(person.id());
    }

    /** Whether a code is one of the person's app or sheet; it then counts for this once. */
    public boolean takes(long personId, String code) {
        var factor = rows.on(personId).orElse(null);
        if (factor == null) {
            return false;
        }
        var digits = digits(code);
        if (digits.matches("[0-9]{%d}".formatted(AppCodes.DIGITS))) {
            return sealed.open(personId, factor.sealedSecret)
                    .map(secret -> takesOfApp(factor, secret, digits))
                    .orElseGet(() -> unreadable(personId));
        }
        return sheets.use(personId, code, today.now());
    }

    private boolean takesOfApp(SecondFactorEntity factor, byte[] secret, String code) {
        var step = AppCodes.stepOf(secret, code, today.moment(), factor.lastStep);
        return step.isPresent() && rows.take(factor.personId, step.getAsLong());
    }

    private static boolean unreadable(long personId) {
        LOG.errorf(
                "The second factor of person %d was sealed with another session key. Codes of their"
                        + " sheet still work; maybe put session.key of the old data folder back, or"
                        + " let a registrar reset it.",
                personId);
        return false;
    }

    private void forget(long personId) {
        rows.deleteById(personId);
        sheets.forget(personId);
    }

    private byte[] secret(SecondFactorEntity factor) {
        return sealed.open(factor.personId, factor.sealedSecret)
                .orElseThrow(SecondFactors::notBegun);
    }

    private SecondFactorEntity required(Actor actor) {
        return rows.findByIdOptional(actor.personId()).orElseThrow(SecondFactors::notBegun);
    }

    private static Refused notBegun() {
        return Refused.conflict("No second factor was begun.", "Maybe begin to set it up.");
    }

    private void requireNone(Actor actor) {
        if (isOn(actor.personId())) {
            throw Refused.conflict("You have a second factor already.", "Maybe turn it off first.");
        }
    }

    private void requireOn(Actor actor) {
        if (!isOn(actor.personId())) {
            throw Refused.conflict("You have no second factor.", "Maybe set it up first.");
        }
    }

    /** Apps show their digits in groups. */
    private static String digits(String code) {
        return code.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    }
}
