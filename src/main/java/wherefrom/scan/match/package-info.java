/** Fourth stage: which of the issued tags it is. */
@NullMarked
package wherefrom.scan.match;

import org.jspecify.annotations.NullMarked;
