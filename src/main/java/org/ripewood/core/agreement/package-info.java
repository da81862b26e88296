/**
 * How far judges agree who graded or scored the same trees or the same skill: kappas for grades,
 * intraclass correlations for scores.
 */
@NullMarked
package org.ripewood.core.agreement;

import org.jspecify.annotations.NullMarked;
