/** Facts and criteria to a verdict with its reasons; order of steps; recovery and dose ledgers. */
@NullMarked
package org.ripewood.core.progress;

import org.jspecify.annotations.NullMarked;
