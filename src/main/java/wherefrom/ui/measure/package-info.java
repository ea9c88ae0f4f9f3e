/** Guided readings, tools, limits, sets held against each other, oil clearance. */
@NullMarked
package wherefrom.ui.measure;

import org.jspecify.annotations.NullMarked;
