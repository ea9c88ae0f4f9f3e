package wherefrom.job.money;

import wherefrom.rules.consequence.Article;

/**
 * Something to buy that carries no tag, such as the cam.
 *
 * @param reason the rule and what it follows from
 */
public record Purchase(Article what, int pieces, String reason) {}
