package wherefrom.job.money;

import java.util.LinkedHashSet;
import java.util.Set;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/**
 * How a piece is asked for.
 *
 * @param at where it is for
 * @param pieces how many of it
 * @param work of the machine shop, not a thing to buy
 * @param open asked for by a rule alone: not bought yet, and not on the list of parts to replace
 * @param rules those that ask for it
 */
record CostAsk(
    Article what,
    String at,
    int pieces,
    boolean work,
    boolean open,
    Set<String> rules,
    String why) {

  /** The same piece asked for once more: one sort that must be comes in place of any sort. */
  CostAsk with(CostAsk now, Goods thing) {
    CostAsk named = now.what().equals(new Article.Known(thing)) ? this : now;
    Set<String> both = new LinkedHashSet<>(rules);
    both.addAll(now.rules());
    return new CostAsk(
        named.what(),
        at,
        Math.max(pieces, now.pieces()),
        named.work(),
        open && now.open(),
        both,
        why);
  }
}
