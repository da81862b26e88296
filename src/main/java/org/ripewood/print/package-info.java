/** What goes on paper: session plan, checklist. */
@NullMarked
package org.ripewood.print;

import org.jspecify.annotations.NullMarked;
