/** One part: where it is, its tag, its notes, photographs and history. */
@NullMarked
package wherefrom.ui.part;

import org.jspecify.annotations.NullMarked;
