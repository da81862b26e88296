/** Signing in, sessions, pauses after wrong passwords, and asking for the password again. */
@NullMarked
package org.ripewood.signin;

import org.jspecify.annotations.NullMarked;
