/** What the person sets for this machine. */
@NullMarked
package wherefrom.ui.settings;

import org.jspecify.annotations.NullMarked;
