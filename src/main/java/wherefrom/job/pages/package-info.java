/** What a build record is made of: sections of rows, plots and pictures. */
@NullMarked
package wherefrom.job.pages;

import org.jspecify.annotations.NullMarked;
