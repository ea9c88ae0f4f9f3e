package wherefrom.job.entry;

import wherefrom.rules.consequence.Article;

/**
 * How many of a single gasket or seal the gasket set holds; said again, the later counts.
 *
 * @param pieces 0 where the set lacks it
 */
public record SetHolds(Article what, int pieces) implements JobEntry {}
