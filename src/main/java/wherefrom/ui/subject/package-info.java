/** What is looked at and measured: choosing one of many. */
@NullMarked
package wherefrom.ui.subject;

import org.jspecify.annotations.NullMarked;
