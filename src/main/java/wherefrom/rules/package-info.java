@NullMarked
package wherefrom.rules;

import org.jspecify.annotations.NullMarked;
