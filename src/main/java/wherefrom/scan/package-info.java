/**
 * Reads tags on pictures in stages: grey levels, candidates, geometry, grid of soft values, match
 * against the issued tags, decoding.
 */
@NullMarked
package wherefrom.scan;

import org.jspecify.annotations.NullMarked;
