package org.ripewood.audit;

import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.RequestOrigin;

/** What an entry is about. */
public enum Deed {
    /** Rows were changed, and nothing else is to be told. */
    CHANGED,
    SIGNED_IN(Deed.SIGN_IN_DOOR),
    SIGN_IN_FAILED(Deed.SIGN_IN_DOOR),
    /** With that failure, tries are held for a while. */
    SIGN_IN_PAUSED(Deed.SIGN_IN_DOOR),
    /** Signed in, but not by the password that was asked for again. */
    CONFIRM_FAILED,
    /** With that failure, further ones are held for a while. */
    CONFIRM_PAUSED,
    SIGNED_OUT,
    SIGNED_OUT_EVERYWHERE,
    /** Of one person, by a registrar. */
    SESSIONS_ENDED,
    /** Of everybody, by a registrar. */
    EVERY_SESSION_ENDED,
    ROLES_CHANGED,
    PASSWORD_CHANGED,
    SECOND_FACTOR_ON,
    SECOND_FACTOR_OFF,
    SECOND_FACTOR_RESET,
    RECOVERY_SHEET_MADE,
    LINK_MADE,
    LINK_USED,
    TOKEN_MADE,
    TOKEN_ENDED,
    RECORD_TAKEN_OUT,
    RECORD_BROUGHT_IN,
    PERSON_FORGOTTEN,
    SAMPLE_ADDED,
    SAMPLE_THROWN_AWAY,
    BACKED_UP;

    /** The framework's own door, which is gone through before a request is told of. */
    private static final String SIGN_IN_DOOR = "POST /j_security_check";

    private final @Nullable String onlyDoor;

    Deed() {
        this(null);
    }

    Deed(@Nullable String onlyDoor) {
        this.onlyDoor = onlyDoor;
    }

    /** The door it was done by this time; where none is told, the one it is always done by. */
    String door(String thisTime) {
        return onlyDoor == null || RequestOrigin.isTold(thisTime) ? thisTime : onlyDoor;
    }
}
