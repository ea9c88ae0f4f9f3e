package wherefrom.ui.bags;

import wherefrom.job.bags.Bag;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.bags.BigParts;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** What the tag of a bag or a big part does where work goes on: out while apart, in while not. */
public final class BesideScan {
  private BesideScan() {}

  /** Whether a code is the tag of a bag or a big part. */
  public static boolean isOne(CodeLookup found) {
    return found instanceof CodeLookup.ABag || found instanceof CodeLookup.ABigPart;
  }

  /** The page that is up makes room for the page of what was scanned. */
  static void leave(ScreenContext context, CodeLookup found) {
    if (isOne(found) || found instanceof CodeLookup.APart) {
      context.navigator().back();
    }
  }

  /** A big part is off. */
  public static void off(ScreenContext context, int number) {
    new BagAnswers(context).take(note -> new BigParts(context.getJob()).off(number, note));
  }

  /** A bag for what holds a big part: how many pieces go in is asked. */
  public static void bag(ScreenContext context, BigPartRecord part) {
    new BagFilling(context).fillFor(part);
  }

  /** While taking apart: a big part is off; a bag that holds nothing yet is filled. */
  public static void out(ScreenContext context, CodeLookup found) {
    if (found instanceof CodeLookup.ABigPart big) {
      off(context, big.part().number());
    } else if (found instanceof CodeLookup.ABag bag) {
      bag.bag().ifPresentOrElse(one -> out(context, one), () -> fill(context, bag.number()));
    }
  }

  private static void fill(ScreenContext context, int number) {
    new BagFilling(context).fill(number);
  }

  /** A bag that is out already shows what is in it. */
  private static void out(ScreenContext context, Bag bag) {
    if (bag.where() == Whereabouts.OUT) {
      context.navigator().show(ScreenId.BAG, bag.number());
    } else {
      move(context, bag.number(), Whereabouts.OUT);
    }
  }

  /** While putting together: a big part is on; all of a bag is used again. */
  public static void in(ScreenContext context, CodeLookup found) {
    if (found instanceof CodeLookup.ABigPart big) {
      int number = big.part().number();
      new BagAnswers(context).take(note -> new BigParts(context.getJob()).on(number, note));
    } else if (found instanceof CodeLookup.ABag bag) {
      move(context, bag.number(), Whereabouts.FITTED);
    }
  }

  private static void move(ScreenContext context, int number, Whereabouts to) {
    new BagAnswers(context).take(note -> new Bags(context.getJob()).move(number, to, 0, note));
  }
}
