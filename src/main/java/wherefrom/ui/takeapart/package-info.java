/** Taking apart: each part logged as it comes out of its place. */
@NullMarked
package wherefrom.ui.takeapart;

import org.jspecify.annotations.NullMarked;
