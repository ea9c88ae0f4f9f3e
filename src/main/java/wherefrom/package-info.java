@NullMarked
package wherefrom;

import org.jspecify.annotations.NullMarked;
