/** Gathers a tree's facts, asks the engine, and puts its verdicts into words. */
@NullMarked
package org.ripewood.standing;

import org.jspecify.annotations.NullMarked;
