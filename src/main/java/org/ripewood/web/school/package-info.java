/** Pages of the school: home, people, lessons, lists, the record, what was done. */
@NullMarked
package org.ripewood.web.school;

import org.jspecify.annotations.NullMarked;
