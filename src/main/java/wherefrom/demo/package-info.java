/** The invented job that comes with the program. */
@NullMarked
package wherefrom.demo;

import org.jspecify.annotations.NullMarked;
