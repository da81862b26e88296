/** A tree's life: what its record and photos tell, in the order of days, and what is ahead. */
@org.jspecify.annotations.NullMarked
package org.ripewood.life;
