package wherefrom.job.money;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;

/** What changes and findings ask to buy besides tagged parts that are to be replaced. */
public final class PurchaseList {
  private final EngineJob job;

  public PurchaseList(EngineJob job) {
    this.job = job;
  }

  /** One line for each thing; what is committed or paid, by itself or in a set, is left out. */
  public List<Purchase> lines() {
    MoneyEntries money = new MoneyEntries(job);
    GasketSet set = GasketSet.of(job);
    return all().stream()
        .filter(thing -> !money.isOrdered(thing.what()))
        .map(thing -> thing.of(thing.pieces() - set.covers(thing.what())))
        .filter(thing -> thing.pieces() > 0)
        .toList();
  }

  /** The same with what is committed or paid. */
  List<Purchase> all() {
    return job.remember(Lines.class, state -> new Lines(workOut())).all();
  }

  private record Lines(List<Purchase> all) {}

  private List<Purchase> workOut() {
    Map<Purchase.Key, Purchase> lines = new LinkedHashMap<>();
    CostList.standing(job).purchases().forEach(asked -> lines.put(asked.key(), asked));
    gaskets().forEach(gasket -> lines.merge(gasket.key(), gasket, PurchaseList::both));
    return List.copyOf(lines.values());
  }

  /** The same pieces asked for twice: a rule may ask for fewer than were opened, or for more. */
  private static Purchase both(Purchase asked, Purchase gasket) {
    return gasket.pieces() > asked.pieces()
        ? new Purchase(asked.what(), gasket.pieces(), asked.reason() + "; " + gasket.reason())
        : asked;
  }

  /** What is always new, once a person has put it on the list. */
  private List<Purchase> gaskets() {
    BagBook book = BagBook.of(job);
    List<AlwaysNew> lines = book.areGasketsListed() ? AlwaysNew.of(book) : List.of();
    return lines.stream().map(PurchaseList::gasket).toList();
  }

  private static Purchase gasket(AlwaysNew line) {
    return new Purchase(
        line.article(), line.pieces(), "always new, opened: " + String.join(", ", line.because()));
  }
}
