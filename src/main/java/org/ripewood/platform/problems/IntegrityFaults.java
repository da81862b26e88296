package org.ripewood.platform.problems;

import java.sql.SQLException;

/** Which failures of the database say that what was sent contradicts what is kept. */
public final class IntegrityFaults {

    /** Class of SQLSTATE for integrity constraints (ISO/IEC 9075-2, clause 24). */
    private static final String CLASS = "23";

    /**
     * H2's own code for a check that cannot be evaluated (its ErrorCode.CHECK_CONSTRAINT_INVALID).
     * PostgreSQL has the same SQLSTATE for a check that is not met, and no code of its own.
     */
    private static final int H2_CHECK_NOT_EVALUATED = 23514;

    private IntegrityFaults() {}

    /** False as well for a check that cannot be evaluated: that is a fault of the service. */
    public static boolean is(SQLException sql) {
        var state = sql.getSQLState();
        return state != null
                && state.startsWith(CLASS)
                && sql.getErrorCode() != H2_CHECK_NOT_EVALUATED;
    }
}
