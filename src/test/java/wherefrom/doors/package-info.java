/** Seeded nonsense at every door of the program. */
@NullMarked
package wherefrom.doors;

import org.jspecify.annotations.NullMarked;
