/** The open job's first screen: where it was left, and the ways on. */
@NullMarked
package wherefrom.ui.home;

import org.jspecify.annotations.NullMarked;
