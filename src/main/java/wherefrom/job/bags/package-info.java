/** What comes off beside the tagged parts: bags of fasteners, and big parts in their order. */
@NullMarked
package wherefrom.job.bags;

import org.jspecify.annotations.NullMarked;
