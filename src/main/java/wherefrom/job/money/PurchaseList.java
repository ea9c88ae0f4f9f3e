package wherefrom.job.money;

import java.util.List;
import java.util.stream.Stream;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;
import wherefrom.job.entry.CostState;
import wherefrom.rules.consequence.Article;

/** What changes and findings ask to buy besides tagged parts that are to be replaced. */
public final class PurchaseList {
  private final EngineJob job;

  public PurchaseList(EngineJob job) {
    this.job = job;
  }

  /** One line for each thing; what is committed or paid is left out. */
  public List<Purchase> lines() {
    List<Purchase> asked = CostList.standing(job).purchases();
    return Stream.concat(asked.stream(), gaskets(asked).stream())
        .filter(thing -> !isOrdered(thing.what()))
        .toList();
  }

  /** What is always new, once a person has put it on the list; a rule may ask for it already. */
  private List<Purchase> gaskets(List<Purchase> asked) {
    BagBook book = BagBook.of(job);
    List<AlwaysNew> lines = book.areGasketsListed() ? AlwaysNew.of(book) : List.of();
    return lines.stream()
        .filter(line -> asked.stream().noneMatch(thing -> thing.what().equals(line.article())))
        .map(PurchaseList::gasket)
        .toList();
  }

  private static Purchase gasket(AlwaysNew line) {
    return new Purchase(
        line.article(), line.pieces(), "always new, opened: " + String.join(", ", line.because()));
  }

  private boolean isOrdered(Article what) {
    return new MoneyEntries(job)
        .lines().stream()
            .filter(line -> Article.read(line.what()).equals(what))
            .anyMatch(
                line -> line.state() == CostState.COMMITTED || line.state() == CostState.PAID);
  }
}
