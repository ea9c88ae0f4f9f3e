/** Numbers with about 31 digits that carry their derivatives along. */
@NullMarked
package wherefrom.workings.maths;

import org.jspecify.annotations.NullMarked;
