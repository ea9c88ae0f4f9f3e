/** The picture at several sizes. */
@NullMarked
package wherefrom.scan.grey;

import org.jspecify.annotations.NullMarked;
