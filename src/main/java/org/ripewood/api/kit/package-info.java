/** What every answer of the API is made with. */
@NullMarked
package org.ripewood.api.kit;

import org.jspecify.annotations.NullMarked;
