package wherefrom.job.entry;

import wherefrom.rules.consequence.Article;

/**
 * What a supplier asks for a package of something; typed again, the later price counts.
 *
 * @param supplier as a person named it
 * @param holds how many pieces one package holds, 1 to 999
 * @param cents the price of one package
 */
public record OfferTyped(String supplier, Article what, int holds, long cents)
    implements JobEntry {}
