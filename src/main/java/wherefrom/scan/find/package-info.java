/** First stage: where a tag may lie. */
@NullMarked
package wherefrom.scan.find;

import org.jspecify.annotations.NullMarked;
