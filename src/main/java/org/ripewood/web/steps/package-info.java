/** Pages of checklists, steps, decisions, techniques and aftercare. */
@NullMarked
package org.ripewood.web.steps;

import org.jspecify.annotations.NullMarked;
