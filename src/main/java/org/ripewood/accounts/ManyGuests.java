package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.people.Courses;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;

/** Invites everybody on a pasted list at once: all of them, or none. */
@ApplicationScoped
@Transactional
public class ManyGuests {

    /** A large class; whoever has more pastes twice (our own choice). */
    public static final int MOST = 40;

    /** Forty lines of the longest fields. */
    private static final int LONGEST_TEXT = 20_000;

    private static final String FIELD = "lines";

    private final PersonRows persons;
    private final Courses courses;
    private final PasswordLinks links;
    private final Inputs inputs;
    private final Today today;

    ManyGuests(
            PersonRows persons, Courses courses, PasswordLinks links, Inputs inputs, Today today) {
        this.persons = persons;
        this.courses = courses;
        this.links = links;
        this.inputs = inputs;
        this.today = today;
    }

    /** A person who was invited, as their line said, with the link told here only. */
    public record Invited(GuestLine line, PasswordLink link) {}

    /**
     * What a list would do, line by line, with what is wrong; nothing is entered. Registrars only.
     *
     * @throws Refused 400 when it has no line, or too many
     */
    public List<GuestLine> look(Actor actor, String text) {
        actor.require(Role.REGISTRAR, "invite persons");
        if (text.length() > LONGEST_TEXT) {
            throw Refused.invalid(
                    FIELD,
                    "expected at most %d characters, found %d"
                            .formatted(LONGEST_TEXT, text.length()));
        }
        var open = courses.list(actor).stream().filter(one -> !one.over(today.date())).toList();
        var lines = new GuestLines(persons.logins(null).keySet(), open).read(text);
        if (lines.isEmpty() || lines.size() > MOST) {
            throw Refused.invalid(
                    FIELD,
                    "expected 1 to %d people, one a line, found %d".formatted(MOST, lines.size()));
        }
        var known = known(lines);
        return lines.stream()
                .map(this::checked)
                .map(line -> known.contains(small(line.name())) ? line.knownByName() : line)
                .toList();
    }

    /** The same list with everything said, to be sent for good. */
    public static String written(List<GuestLine> lines) {
        return lines.stream().map(GuestLine::written).collect(Collectors.joining("\n"));
    }

    /**
     * Enters everybody on a list, adds them to their courses and makes the links by which they
     * choose their passwords; registrars only.
     *
     * @throws Refused 400 with every fault of every line; nobody is entered then
     */
    public List<Invited> invite(Actor actor, String text) {
        var lines = look(actor, text);
        var faults =
                lines.stream()
                        .flatMap(
                                line ->
                                        line.faults().stream()
                                                .map(fault -> told(line.number(), fault)))
                        .toList();
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        var invited = new ArrayList<Invited>();
        for (var line : lines) {
            var guest = new NewGuest(line.name(), line.login(), line.roles());
            var link = links.invite(actor, guest);
            if (line.course() != null) {
                courses.join(actor, line.course().id(), link.person().id(), line.inCourse());
            }
            invited.add(new Invited(line, link));
        }
        return invited;
    }

    private static Fault told(int number, String fault) {
        return new Fault(FIELD, "line %d: %s".formatted(number, fault));
    }

    /** A line that reads well keeps to what any invitation has to keep to, too. */
    private GuestLine checked(GuestLine line) {
        if (!line.faults().isEmpty()) {
            return line;
        }
        try {
            inputs.check(new NewGuest(line.name(), line.login(), line.roles()));
            return line;
        } catch (Refused refused) {
            return line.wrong(refused.problem().faults().stream().map(Fault::message).toList());
        }
    }

    /** Names on the list that somebody at the school has, in small letters. */
    private Set<String> known(List<GuestLine> lines) {
        var asked = lines.stream().map(line -> small(line.name())).collect(Collectors.toSet());
        var found = new HashSet<String>();
        persons.list("lower(name) in ?1", asked).forEach(one -> found.add(small(one.name)));
        return found;
    }

    private static String small(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
