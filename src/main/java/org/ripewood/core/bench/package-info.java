/** The class day: which work each tree gets, and when, at which bench and under whose eyes. */
@NullMarked
package org.ripewood.core.bench;

import org.jspecify.annotations.NullMarked;
