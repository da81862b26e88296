/** Pages of signing in, passwords and the second factor. */
@NullMarked
package org.ripewood.web.account;

import org.jspecify.annotations.NullMarked;
