/** Pages of the first look at a tree: one question a screen, made for the phone. */
@NullMarked
package org.ripewood.web.firstlook;

import org.jspecify.annotations.NullMarked;
