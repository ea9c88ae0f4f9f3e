package wherefrom.job.money;

import wherefrom.job.entry.CostState;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;

/**
 * A cost line as it stands.
 *
 * @param about what it is for: a subject's or a kind's key, or empty
 * @param plan the plan that it belongs to; 0 for none
 */
public record CostLine(
    int number, Article what, String about, CostState state, Money amount, int plan, String note) {}
