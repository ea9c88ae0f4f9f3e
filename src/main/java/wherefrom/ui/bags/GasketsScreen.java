package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** Gaskets and seals that are always new, as they follow from what was opened. */
public final class GasketsScreen extends ListPage {
  private final TagKey tag;

  GasketsScreen(ScreenContext context) {
    super(context, "Always new");
    tag = tag(context.navigator()::back);
    tag.setWords("Back", "");
    layOut(tag);
  }

  private List<AlwaysNew> lines() {
    return AlwaysNew.of(BagBook.of(context.state()));
  }

  @Override
  public String aside() {
    int pieces = lines().stream().mapToInt(AlwaysNew::pieces).sum();
    return pieces + " to buy";
  }

  @Override
  protected String whenEmpty() {
    return "Nothing is open yet. What comes off adds its gaskets here.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (AlwaysNew line : lines()) {
      rows.add(
          told(line.pieces() + " " + line.what(), "because: " + String.join(", ", line.because())));
    }
    return rows;
  }
}
