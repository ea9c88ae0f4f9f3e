@NullMarked
package wherefrom.quantity;

import org.jspecify.annotations.NullMarked;
