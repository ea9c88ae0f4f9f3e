package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.decide.BuyScreen;
import wherefrom.ui.decide.GasketSetScreen;

/** Gaskets and seals that are always new, as they follow from what was opened. */
public final class GasketsScreen extends ListPage {
  private final TagKey tag;
  private final Foot foot;

  GasketsScreen(ScreenContext context) {
    super(context, "Always new");
    tag = tag(this::press);
    foot = new Foot(context, tag, KeyRow.of(context));
    layOut(foot);
  }

  private BagBook book() {
    return BagBook.of(context.state());
  }

  @Override
  protected void refresh() {
    super.refresh();
    foot.offerTag(!lines().isEmpty());
    boolean listed = book().areGasketsListed();
    tag.setWords(
        listed ? "To the buying list" : "Put on buying list",
        touch().brief(listed ? "they stand on it" : "it grows with what is opened", ""));
  }

  private void press() {
    if (book().areGasketsListed()) {
      open(() -> new BuyScreen(context));
    } else {
      new BagAnswers(context).take(none -> new BigParts(context.getJob()).listGaskets(true));
    }
  }

  private List<AlwaysNew> lines() {
    return AlwaysNew.of(book());
  }

  @Override
  public String aside() {
    int pieces = lines().stream().mapToInt(AlwaysNew::pieces).sum();
    return pieces + " to buy";
  }

  @Override
  protected String whenEmpty() {
    return "No cover or other part that has a gasket is off yet. What comes off adds its gaskets here.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    if (!lines().isEmpty()) {
      rows.add(
          key(
              "A gasket set",
              touch().brief("tick which of these it holds", "tick what it holds"),
              () -> open(() -> new GasketSetScreen(context))));
    }
    for (AlwaysNew line : lines()) {
      rows.add(
          told(line.pieces() + " " + line.what(), "because: " + String.join(", ", line.because())));
    }
    return rows;
  }
}
