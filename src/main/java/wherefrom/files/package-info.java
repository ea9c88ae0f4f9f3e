/** Files that appear whole or not at all. */
@NullMarked
package wherefrom.files;

import org.jspecify.annotations.NullMarked;
