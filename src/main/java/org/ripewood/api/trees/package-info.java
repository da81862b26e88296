/** Trees, their records, photos, aftercare and sites, as JSON. */
@NullMarked
package org.ripewood.api.trees;

import org.jspecify.annotations.NullMarked;
