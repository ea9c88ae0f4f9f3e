/** Photographs: taken, shown small beside each other, and one large. */
@NullMarked
package wherefrom.ui.photos;

import org.jspecify.annotations.NullMarked;
