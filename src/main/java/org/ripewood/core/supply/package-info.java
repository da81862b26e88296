/**
 * The school's arithmetic: what containers hold, what mixes weigh, how much wire and feed, what a
 * person may lift, and what has to be bought.
 */
@NullMarked
package org.ripewood.core.supply;

import org.jspecify.annotations.NullMarked;
