/** What a use case needs of the world outside, and who gives it. */
@NullMarked
package wherefrom.job.ports;

import org.jspecify.annotations.NullMarked;
