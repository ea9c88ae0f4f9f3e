/** Quick looks at parts and features, and what debris was found. */
@NullMarked
package wherefrom.job.inspect;

import org.jspecify.annotations.NullMarked;
