/** The engine's layout, field by field. */
@NullMarked
package wherefrom.ui.engine;

import org.jspecify.annotations.NullMarked;
