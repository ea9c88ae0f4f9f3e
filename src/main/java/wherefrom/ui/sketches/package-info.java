/** Plain drawings of parts and of what carries no tag, with the spots to look at. */
@NullMarked
package wherefrom.ui.sketches;

import org.jspecify.annotations.NullMarked;
