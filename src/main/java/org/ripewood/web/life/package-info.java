/** Pages of a tree's life. */
@org.jspecify.annotations.NullMarked
package org.ripewood.web.life;
