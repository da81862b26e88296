/** Import of a school's records, and the demo school through the same door. */
@NullMarked
package org.ripewood.transfer;

import org.jspecify.annotations.NullMarked;
