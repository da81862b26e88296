/** What a person's calendar program reads behind a private link (RFC 5545). */
@NullMarked
package org.ripewood.calendar;

import org.jspecify.annotations.NullMarked;
