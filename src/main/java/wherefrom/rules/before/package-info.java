/** What compression, leak-down, oil pressure and vacuum point to, before the engine is open. */
@NullMarked
package wherefrom.rules.before;

import org.jspecify.annotations.NullMarked;
