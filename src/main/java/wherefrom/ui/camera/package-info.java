/** Reading tags with a camera. */
@NullMarked
package wherefrom.ui.camera;

import org.jspecify.annotations.NullMarked;
