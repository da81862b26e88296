/** What the school is called. */
@NullMarked
package org.ripewood.school;

import org.jspecify.annotations.NullMarked;
