/** Parts that lost their tags, told apart again by what was measured on them. */
@NullMarked
package wherefrom.inspection.match;

import org.jspecify.annotations.NullMarked;
