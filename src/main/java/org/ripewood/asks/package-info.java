/** What keepers ask of their instructors at a technique, and the answers. */
@NullMarked
package org.ripewood.asks;

import org.jspecify.annotations.NullMarked;
