/** One photograph of a whole tray: logged as out, or held against the bench plan. */
@NullMarked
package wherefrom.ui.tray;

import org.jspecify.annotations.NullMarked;
