/** Finding a folder or a file by touch. */
@NullMarked
package wherefrom.ui.files;

import org.jspecify.annotations.NullMarked;
