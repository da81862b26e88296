/** What a course, a checklist and a class day show of many trees. */
@NullMarked
package org.ripewood.boards;

import org.jspecify.annotations.NullMarked;
