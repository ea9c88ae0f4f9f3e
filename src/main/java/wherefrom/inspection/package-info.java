@NullMarked
package wherefrom.inspection;

import org.jspecify.annotations.NullMarked;
