/** Cameras, recorded clips and test pictures, all through one FFmpeg grabber. */
@NullMarked
package wherefrom.scan.camera;

import org.jspecify.annotations.NullMarked;
