/**
 * Pictures of values as SVG text, the same on page and paper, each with a table that says the same.
 */
@NullMarked
package org.ripewood.pictures;

import org.jspecify.annotations.NullMarked;
