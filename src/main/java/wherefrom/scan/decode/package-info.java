/** Decoding with the symbol's own error correction, for tags that are not in the list. */
@NullMarked
package wherefrom.scan.decode;

import org.jspecify.annotations.NullMarked;
