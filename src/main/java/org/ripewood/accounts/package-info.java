/** Entering people, inviting them, and the links and tokens they come in by. */
@NullMarked
package org.ripewood.accounts;

import org.jspecify.annotations.NullMarked;
