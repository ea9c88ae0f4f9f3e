/**
 * The drawn engine on the glass: drawings of {@link wherefrom.drawing} as nodes, their states as
 * pseudo-classes of the style sheet, their zones as targets.
 */
@NullMarked
package wherefrom.ui.drawn;

import org.jspecify.annotations.NullMarked;
