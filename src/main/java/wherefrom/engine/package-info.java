@NullMarked
package wherefrom.engine;

import org.jspecify.annotations.NullMarked;
