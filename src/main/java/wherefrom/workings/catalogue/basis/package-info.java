/** What several workings share: circles and cylinders, gaps, spreads and sources. */
@NullMarked
package wherefrom.workings.catalogue.basis;

import org.jspecify.annotations.NullMarked;
