/** A made-up course to try the service with: added, told apart, thrown away. */
@NullMarked
package org.ripewood.sample;

import org.jspecify.annotations.NullMarked;
