@NullMarked
package wherefrom.print;

import org.jspecify.annotations.NullMarked;
