package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.SupplierOffer;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** One line of the list as it is bought: the set, the spares, the offers, what is here. */
public final class GoodsScreen extends ListPage implements Scannable {
  private final BuyLine first;

  GoodsScreen(ScreenContext context, BuyLine line) {
    super(context, Words.capital(line.words()));
    first = line;
    TagKey tag = tag(() -> new BuyAsking(context, now()).askArrived());
    tag.setWords(
        touch().brief("Check in what came", "Check it in"), touch().brief(checkedBy(line), ""));
    layOut(tag);
  }

  /** Of what carries no tag there is mostly nothing to measure. */
  private static String checkedBy(BuyLine line) {
    return line.isTagged() ? "count, then measure one" : "count, then read the box";
  }

  /** As it is now; as it was where it has left the list. */
  private BuyLine now() {
    return new Buying(context.state())
        .lines().stream().filter(first::isLineOf).findFirst().orElse(first);
  }

  @Override
  public boolean takesNumbers() {
    return true;
  }

  @Override
  public void scan(Scanned scanned) {
    BoxScan.take(context, scanned);
  }

  @Override
  public String aside() {
    return now().arrivedWords();
  }

  @Override
  protected List<Region> rows() {
    BuyLine line = now();
    List<Region> rows =
        new ArrayList<>(List.of(told("At the counter", Words.sentence(line.orderWords()))));
    rows.add(
        told(
            "Usual package",
            Words.capital(line.packageWords())
                + " (common practice, no source). Ask the supplier."));
    rows.add(told("Because", Words.sentence(line.reason())));
    rows.add(key("Type an offer", "who, how many, how much", this::offer));
    String numbers = String.join(", ", line.numbers());
    rows.add(
        key(
            "Number on the box",
            numbers.isEmpty() ? "scan or type it once" : numbers,
            () -> new BuyAsking(context, now()).askNumber()));
    if (line.isGasketSet()) {
      rows.add(
          key(
              "What the set holds",
              "tick the gaskets in it",
              () -> open(() -> new GasketSetScreen(context))));
    }
    MoneyBook book = new MoneyBook(context.getJob());
    for (SupplierOffer offer : new Buying(context.state()).offers()) {
      offer
          .find(line)
          .ifPresent(one -> rows.add(told(offer.supplier(), OffersScreen.words(one, book))));
    }
    return rows;
  }

  private void offer() {
    new BuyAsking(context, now()).askOffer();
  }
}
