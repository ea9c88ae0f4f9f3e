/** What a reader of tags finds in a picture, live or still. */
@NullMarked
package wherefrom.job.reader;

import org.jspecify.annotations.NullMarked;
