@NullMarked
package org.ripewood;

import org.jspecify.annotations.NullMarked;
