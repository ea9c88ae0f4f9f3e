/** The build record: what is done and what is not, on the screen and to be printed. */
@NullMarked
package wherefrom.ui.record;

import org.jspecify.annotations.NullMarked;
