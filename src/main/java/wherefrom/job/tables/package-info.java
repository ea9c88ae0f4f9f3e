/** The job as tables for spreadsheets and other programs: one row one fact. */
@NullMarked
package wherefrom.job.tables;

import org.jspecify.annotations.NullMarked;
