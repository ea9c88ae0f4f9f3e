@NullMarked
package wherefrom.job;

import org.jspecify.annotations.NullMarked;
