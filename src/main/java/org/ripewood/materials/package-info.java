/** The school's stock: containers, substrates, mixes, wire, tools and other supplies. */
@NullMarked
package org.ripewood.materials;

import org.jspecify.annotations.NullMarked;
