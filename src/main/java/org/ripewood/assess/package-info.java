/** Instructors' judgements of a tree and of a student's skill. */
@NullMarked
package org.ripewood.assess;

import org.jspecify.annotations.NullMarked;
