/** Lists of people, trees and readings, entered line by line from CSV. */
@NullMarked
package org.ripewood.lists;

import org.jspecify.annotations.NullMarked;
