/** Second stage: how a tag lies, by laying the pattern that is alike on every tag over it. */
@NullMarked
package wherefrom.scan.geometry;

import org.jspecify.annotations.NullMarked;
