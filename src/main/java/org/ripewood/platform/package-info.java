/** Current day and user, problems and how they become HTTP, paging, Markdown; knows no room. */
@NullMarked
package org.ripewood.platform;

import org.jspecify.annotations.NullMarked;
