/** The settings of this machine, kept in one file. */
@NullMarked
package wherefrom.settings;

import org.jspecify.annotations.NullMarked;
