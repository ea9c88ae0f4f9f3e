/** Picture files, turned upright and in grey values. */
@NullMarked
package wherefrom.scan.picture;

import org.jspecify.annotations.NullMarked;
