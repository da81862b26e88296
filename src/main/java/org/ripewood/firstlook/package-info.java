/** The first look at a tree: questions by eye, rule and phone, and what each answer changed. */
@NullMarked
package org.ripewood.firstlook;

import org.jspecify.annotations.NullMarked;
