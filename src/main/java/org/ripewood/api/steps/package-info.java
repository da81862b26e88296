/** Standing, steps and judgements, as JSON. */
@NullMarked
package org.ripewood.api.steps;

import org.jspecify.annotations.NullMarked;
