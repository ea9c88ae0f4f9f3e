/** The window's start and the list of all screens. */
@NullMarked
package wherefrom.ui;

import org.jspecify.annotations.NullMarked;
