/** What was found in the oil and where, what it points to, and what to open next. */
@NullMarked
package wherefrom.rules.debris;

import org.jspecify.annotations.NullMarked;
