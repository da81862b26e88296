/** Pages and forms. */
@NullMarked
package org.ripewood.web;

import org.jspecify.annotations.NullMarked;
