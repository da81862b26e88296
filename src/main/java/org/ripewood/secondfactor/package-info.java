/** One-time codes of an app, and the sheet of codes for when it is lost. */
@NullMarked
package org.ripewood.secondfactor;

import org.jspecify.annotations.NullMarked;
