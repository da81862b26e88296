package org.ripewood.secondfactor;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.ripewood.passwords.Passwords;

/**
 * The sheet with which a person signs in who has lost their app: ten codes, each good once. A code
 * has twelve letters: the first finds it, the others are 55 random bits, kept as a slow hash (OWASP
 * ASVS 5.0.0, 6.5.2 and 6.5.4).
 */
@ApplicationScoped
class RecoverySheets implements PanacheRepositoryBase<RecoveryCodeEntity, Long> {

    static final int CODES = 10;

    private static final int LETTERS = 12;
    private static final int GROUP = 4;
    private static final SecureRandom RANDOM = new SecureRandom();

    /** A new sheet, told here only; the one before is worth nothing any more. */
    List<String> make(long personId) {
        forget(personId);
        var letters = new ArrayList<>(Base32.LETTERS.chars().mapToObj(c -> (char) c).toList());
        Collections.shuffle(letters, RANDOM);
        var sheet = new ArrayList<String>();
        for (char first : letters.subList(0, CODES)) {
            var code = code(first);
            var row = new RecoveryCodeEntity();
            row.personId = personId;
            row.letter = String.valueOf(first);
            row.codeHash = Passwords.hash(code);
            persist(row);
            sheet.add(grouped(code));
        }
        return sheet;
    }

    void forget(long personId) {
        delete("personId", personId);
        flush();
    }

    long left(long personId) {
        return count("personId = ?1 and usedAt is null", personId);
    }

    /** Uses a code up; false when it is none that is left. Takes as long for one as for none. */
    boolean use(long personId, String typed, Instant now) {
        var code = plain(typed);
        var row =
                code.isEmpty()
                        ? null
                        : find("personId = ?1 and letter = ?2", personId, code.substring(0, 1))
                                .firstResult();
        var matches = Passwords.matches(row == null ? null : row.codeHash, code);
        return matches
                && row != null
                && update("usedAt = ?1 where id = ?2 and usedAt is null", now, row.id) == 1;
    }

    /** However it was typed off the sheet. */
    private static String plain(String typed) {
        return typed.toUpperCase(Locale.ROOT)
                .replaceAll("[^A-Z0-9]", "")
                .replace('0', 'O')
                .replace('1', 'I')
                .replace('8', 'B');
    }

    private static String code(char first) {
        var code = new StringBuilder().append(first);
        while (code.length() < LETTERS) {
            code.append(Base32.LETTERS.charAt(RANDOM.nextInt(Base32.LETTERS.length())));
        }
        return code.toString();
    }

    private static String grouped(String code) {
        return code.replaceAll("(.{%d})(?=.)".formatted(GROUP), "$1-");
    }
}
