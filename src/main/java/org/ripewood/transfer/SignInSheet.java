package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.platform.Role;

/** The passwords made for a school that is being loaded, and who is told theirs. */
final class SignInSheet {

    private record Welcome(String name, String login, String roles) {}

    private final Passwords passwords = new Passwords();
    private final Map<String, String> byLogin = new HashMap<>();
    private final List<Welcome> welcomes = new ArrayList<>();

    /** The password of a login; the same one however often it is asked for. */
    String passwordOf(String login) {
        return byLogin.computeIfAbsent(login, any -> passwords.make());
    }

    /** Puts a person on the sheet. */
    void welcome(String name, String login, Set<Role> roles) {
        var words =
                roles.stream()
                        .sorted()
                        .map(role -> role.name().toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining(" and "));
        welcomes.add(new Welcome(name, login, words));
    }

    /** One line for each person: role, name, what to type. */
    String text() {
        return welcomes.stream()
                .map(
                        welcome ->
                                "  %-24s %-20s name %-10s password %s"
                                        .formatted(
                                                welcome.roles(),
                                                welcome.name(),
                                                welcome.login(),
                                                passwordOf(welcome.login())))
                .collect(Collectors.joining(System.lineSeparator()));
    }
}
