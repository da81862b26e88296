/** What is taught, to be read apart from any tree: techniques, species, rubrics and words. */
@NullMarked
package org.ripewood.web.catalogue;

import org.jspecify.annotations.NullMarked;
