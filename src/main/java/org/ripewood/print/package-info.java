/** What goes on paper: session plan, checklist, route, tree card, passport; as pages and as PDF. */
@NullMarked
package org.ripewood.print;

import org.jspecify.annotations.NullMarked;
