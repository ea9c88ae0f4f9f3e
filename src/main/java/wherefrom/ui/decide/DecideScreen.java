package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** What nobody has decided about, kind by kind; a scanned part is decided about at once. */
public final class DecideScreen implements Screen, Scannable {
  static final String WANTED = "Scan a part's tag to decide about it.";

  private final Desk desk;
  private final DecideModel model;
  private final FitText standing;
  private final TouchKey asking;
  private final Pager<Region> rows;
  private final VBox view;

  public DecideScreen(Desk desk) {
    this.desk = desk;
    model = new DecideModel(desk.getJob());
    standing = desk.touch().text("");
    asking = desk.touch().primary("", this::ask);
    rows = Pager.list(desk.touch(), row -> row);
    view =
        Panes.column(
            desk.scale(),
            standing,
            rows,
            Tiles.row(
                desk.scale(),
                desk.touch().primary(desk.touch().brief("Type a code", "Type"), this::typeCode),
                asking,
                desk.touch().primary(desk.touch().brief("What to buy", "Buy"), this::buy)));
  }

  @Override
  public String title() {
    return "Decide";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    standing.setWords(model.standing());
    asking.setWords(
        model.isAskedOfAll()
            ? desk.touch().brief("Ask only where in doubt", "Ask less")
            : desk.touch().brief("Ask of every part", "Ask all"));
    List<Region> lines = new ArrayList<>();
    model.groups().forEach(group -> lines.add(row(group)));
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(DecideModel.Group group) {
    String left = group.undecided() == 0 ? "decided" : group.undecided() + " not decided";
    return ListRow.key(
        desk.touch(),
        Words.capital(group.kind().plural()) + ": " + left,
        List.of(group.words()),
        () -> desk.navigator().open(() -> new DecideSetScreen(desk, group.kind())));
  }

  @Override
  public void scan(String text) {
    ScannedPart.find(desk, text, WANTED).ifPresent(this::open);
  }

  private void open(int item) {
    desk.navigator().open(() -> new DecidePartScreen(desk, item));
  }

  private void ask() {
    desk.attempt(model::turnAsking);
    desk.navigator().changed();
  }

  private void typeCode() {
    ScannedPart.type(desk, WANTED, this::open);
  }

  private void buy() {
    desk.navigator().open(() -> new BuyScreen(desk));
  }
}
