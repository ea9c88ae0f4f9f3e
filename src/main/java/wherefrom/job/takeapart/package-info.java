/** Taking the engine apart: each part out of its place. */
@NullMarked
package wherefrom.job.takeapart;

import org.jspecify.annotations.NullMarked;
