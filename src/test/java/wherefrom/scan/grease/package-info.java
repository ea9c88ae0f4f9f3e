/** Damaged frames of printed tags, made from seeds, and what readers make of them. */
@NullMarked
package wherefrom.scan.grease;

import org.jspecify.annotations.NullMarked;
