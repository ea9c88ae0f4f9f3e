/** Picture files in colour: turned upright, at the size that is wanted. */
@NullMarked
package wherefrom.pictures;

import org.jspecify.annotations.NullMarked;
