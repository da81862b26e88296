/** Trees on a day, as their records say they are, and what growing will bring about. */
@NullMarked
package org.ripewood.condition;

import org.jspecify.annotations.NullMarked;
