/** How fast the window comes up and answers. */
@NullMarked
package wherefrom.ui.bench;

import org.jspecify.annotations.NullMarked;
