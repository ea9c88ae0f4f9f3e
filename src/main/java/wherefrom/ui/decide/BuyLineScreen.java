package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.money.Replacement;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.TagKey;

/**
 * New parts of one kind to buy: their size, where they are for, why; pressed when they are here.
 */
public final class BuyLineScreen extends ListPage {
  private final Replacement line;
  private final DecideModel model;

  BuyLineScreen(Desk desk, Replacement line) {
    super(desk, title(line));
    this.line = line;
    model = new DecideModel(desk.getJob());
    TagKey tag = tag(this::takeOn);
    tag.setWords("They are here", touch().brief("the old ones are retired", ""));
    layOut(new Foot(desk, tag, KeyRow.of(desk)));
  }

  /** {@code 16 rod shells}. */
  static String title(Replacement line) {
    return line.pieces() + " " + (line.pieces() == 1 ? line.kind().word() : line.kind().plural());
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>(said("Size", line.size() + "."));
    rows.addAll(said("For", DecideModel.places(line.places()) + "."));
    rows.addAll(said("Because", line.reason()));
    return rows;
  }

  private void takeOn() {
    if (desk.attempt(() -> desk.say(model.takeOn(line)))) {
      desk.navigator().back();
      desk.navigator().show(ScreenId.PRINT_TAGS);
    }
  }
}
