/** People, lists, the record and what was done, as JSON. */
@NullMarked
package org.ripewood.api.school;

import org.jspecify.annotations.NullMarked;
