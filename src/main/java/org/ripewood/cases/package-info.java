/** Judgement cases: what teachers say of trees, held against what the rules say of them. */
@NullMarked
package org.ripewood.cases;

import org.jspecify.annotations.NullMarked;
