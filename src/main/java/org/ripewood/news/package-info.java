/** What others did to one's trees and courses since one's last visit. */
@NullMarked
package org.ripewood.news;

import org.jspecify.annotations.NullMarked;
