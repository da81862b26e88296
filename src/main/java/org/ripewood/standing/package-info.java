/** Gathers a tree's facts, asks the engine, keeps assigned steps, waivers and sign-offs. */
@NullMarked
package org.ripewood.standing;

import org.jspecify.annotations.NullMarked;
