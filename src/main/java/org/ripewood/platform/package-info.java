/** Current day and user, paging, Markdown; knows no room. */
@NullMarked
package org.ripewood.platform;

import org.jspecify.annotations.NullMarked;
