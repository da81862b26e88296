/** Who did what, when and by which door; nothing of what was written. Leans on no other room. */
@NullMarked
package org.ripewood.audit;

import org.jspecify.annotations.NullMarked;
