/** Which passwords may be chosen, and how they are kept. */
@NullMarked
package org.ripewood.passwords;

import org.jspecify.annotations.NullMarked;
