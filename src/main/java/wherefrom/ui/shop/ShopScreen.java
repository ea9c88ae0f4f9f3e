package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.shop.Washing;
import wherefrom.text.Words;
import wherefrom.ui.app.Dates;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** What is not here: the visits to the machine shop, the washing, and parts without their tags. */
public final class ShopScreen extends Page {
  private static final String WASHING = "Washing";
  private static final String LOST = "Tags lost";

  private final Pager<Region> rows;

  public ShopScreen(ScreenContext context) {
    super(context, "Machine shop");
    rows = Pager.list(context.touch(), row -> row);
    Foot keys =
        new Foot(
            context,
            touch().tag("New visit", "", this::fresh),
            touch().isLarge()
                ? KeyRow.of(
                    context,
                    new KeyRow.Act(WASHING, this::washing),
                    new KeyRow.Act(LOST, this::lost))
                : KeyRow.of(context));
    lay(Panes.column(context.scale(), rows, keys));
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    List<ShopVisit> visits = new ArrayList<>(new MachineShop(context.getJob()).visits());
    int washing =
        new Washing(context.getJob()).baskets().stream().mapToInt(Washing.Basket::pieces).sum();
    if (visits.isEmpty() && (washing == 0 || !touch().isLarge())) {
      lines.add(
          ListRow.told(
              touch(),
              "Nothing is at the machine shop",
              "A new visit gets a slip. It says what goes, what is wanted, what must not"
                  + " get lost."));
    }
    Collections.reverse(visits);
    visits.forEach(visit -> lines.add(row(visit)));
    if (washing > 0) {
      lines.add(key("Off for washing", Words.count(washing, "piece"), this::washing));
    } else if (!touch().isLarge()) {
      lines.add(key(WASHING, "Baskets with numbers: what is in which.", this::washing));
    }
    if (!touch().isLarge()) {
      lines.add(key(LOST, "Readings tell which part is which.", this::lost));
    }
    rows.refill(lines);
  }

  private Region key(String heading, String line, Runnable act) {
    return ListRow.key(touch(), heading, List.of(line), act);
  }

  private Region row(ShopVisit visit) {
    String day = Dates.ago(visit.sent(), context.services().clock());
    return ListRow.key(
        context.touch(),
        "Visit " + visit.number() + ": " + VisitModel.count(visit),
        List.of(day),
        () -> open(visit.number(), true));
  }

  private void fresh() {
    open(MachineShop.NEW_VISIT, false);
  }

  private void open(int number, boolean checkingIn) {
    VisitModel model = new VisitModel(context.getJob(), number, checkingIn);
    open(() -> new VisitScreen(context, model));
  }

  private void washing() {
    WashModel model = new WashModel(context.getJob(), context.nanos());
    open(() -> new WashScreen(context, model));
  }

  private void lost() {
    RetagScreen.open(context);
  }
}
