package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.SupplierOffer;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;

/** Two offers side by side: line by line, their sums, and what each lacks. */
public final class OffersScreen extends ListPage {
  private static final double WORDS = 40;
  private static final double OFFER = 30;

  private final String left;
  private final String right;

  OffersScreen(ScreenContext context, String left, String right) {
    super(context, "Two offers");
    this.left = left;
    this.right = right;
    layOut(List.of(), List.of());
  }

  /** {@code 1 × 16 at 85.00: 85.00 EUR}. */
  static String words(SupplierOffer.Priced one, MoneyBook book) {
    return packed(one) + ": " + book.budget().text(one.amount());
  }

  private static String packed(SupplierOffer.Priced one) {
    String packed = one.holds() == 1 ? "" + one.packages() : one.packages() + " × " + one.holds();
    return packed + " at " + one.price().text();
  }

  /** Between the columns the currency is said once; narrow ones have room for the sum. */
  private String cell(SupplierOffer.Priced one) {
    boolean narrow = touch().isLarge() || Panes.isUpright(view());
    return (narrow ? "" : packed(one) + ": ") + one.amount().text();
  }

  private List<SupplierOffer> both(Buying buying) {
    List<SupplierOffer> both = new ArrayList<>();
    for (String name : List.of(left, right)) {
      buying.offers().stream().filter(one -> one.supplier().equals(name)).forEach(both::add);
    }
    return both;
  }

  @Override
  protected List<Region> rows() {
    Buying buying = new Buying(context.state());
    String currency = new MoneyBook(context.getJob()).budget().currency();
    List<SupplierOffer> both = both(buying);
    List<Region> rows = new ArrayList<>();
    rows.add(row("", both, SupplierOffer::supplier));
    rows.add(row(currency.isEmpty() ? "Sum" : "Sum, " + currency, both, one -> one.sum().text()));
    rows.add(
        row(
            "Lacks",
            both,
            one -> one.lacks().size() + (one.lacks().size() == 1 ? " line" : " lines")));
    for (BuyLine line : buying.lines()) {
      if (line.open() > 0) {
        rows.add(
            row(
                Words.capital(line.words()),
                both,
                one -> one.find(line).map(this::cell).orElse("lacks it")));
      }
    }
    return rows;
  }

  private Region row(String words, List<SupplierOffer> both, Function<SupplierOffer, String> cell) {
    GridPane row = new GridPane();
    row.setHgap(context.scale().gap());
    row.getColumnConstraints().add(column(WORDS));
    row.addColumn(0, text(words));
    for (int at = 0; at < both.size(); at++) {
      row.getColumnConstraints().add(column(OFFER));
      row.addColumn(at + 1, text(cell.apply(both.get(at))));
    }
    return row;
  }

  private FitText text(String words) {
    return touch().small(words);
  }

  private static ColumnConstraints column(double percent) {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(percent);
    return column;
  }
}
