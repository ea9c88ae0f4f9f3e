/** What every text is made with: a capital, a full stop, how many, which number. */
@NullMarked
package wherefrom.text;

import org.jspecify.annotations.NullMarked;
