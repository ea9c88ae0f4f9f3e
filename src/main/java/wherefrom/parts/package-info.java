@NullMarked
package wherefrom.parts;

import org.jspecify.annotations.NullMarked;
