/** The record as a file: out, in again, and a person's part of it. */
@NullMarked
package org.ripewood.archive;

import org.jspecify.annotations.NullMarked;
