/**
 * A job's logbook, its photographs and its shelf as files; LOGBOOK.md beside this says what is
 * promised.
 */
@NullMarked
package wherefrom.logbook;

import org.jspecify.annotations.NullMarked;
