/** The window: shell, going from screen to screen, keys, and what screens work with. */
@NullMarked
package wherefrom.ui.app;

import org.jspecify.annotations.NullMarked;
