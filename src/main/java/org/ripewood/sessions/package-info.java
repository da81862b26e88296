/** Class dates, enrolment, attendance. */
@NullMarked
package org.ripewood.sessions;

import org.jspecify.annotations.NullMarked;
