/** Persons, accounts, roles, the courses they belong to, sign-in. */
@NullMarked
package org.ripewood.people;

import org.jspecify.annotations.NullMarked;
