/** Workings of camshaft timing. */
@NullMarked
package wherefrom.workings.catalogue.timing;

import org.jspecify.annotations.NullMarked;
