package wherefrom.ui.decide;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.parts.Part;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.SubjectPictures;

/** What nobody has decided about, kind by kind; a scanned part is decided about at once. */
public final class DecideScreen extends Page implements Scannable {
  static final String WANTED = "Scan a part's tag to decide about it.";
  private static final int COLUMNS = 2;

  private final DecideModel model;
  private final CellGrid grid;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;

  public DecideScreen(ScreenContext context) {
    super(context, "Decide");
    model = new DecideModel(context.getJob());
    grid = new CellGrid(touch(), COLUMNS);
    tag = tag(() -> model.next().ifPresent(part -> decide(part.item())));
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    lay(Panes.column(context.scale(), grid, foot));
  }

  @Override
  public String aside() {
    return model.open();
  }

  @Override
  protected void refresh() {
    grid.show(model.groups().stream().map(this::cell).toList());
    Optional<Part> next = model.next();
    foot.offerTag(next.isPresent());
    next.map(model::title)
        .ifPresent(part -> tag.setWords(next(part), touch().brief(standing(), "")));
    keys.setActs(
        List.of(
            act(touch().brief("What to buy", "Buy"), () -> open(() -> new BuyScreen(context))),
            act(asking(), this::ask),
            act(
                touch().brief("Type a code", "Code"),
                () -> ScannedPart.type(context, WANTED, this::decide))));
  }

  /** Letters of twice the size leave no room for more than the part. */
  private String next(String part) {
    boolean scarce = touch().isLarge() && context.scale().textFactor() >= 2;
    return scarce ? part : "Next: " + part;
  }

  /** The key that changes for which parts a decision is asked. */
  private String asking() {
    return model.isAskedOfAll() ? "Ask less" : "Ask all";
  }

  private String standing() {
    return model.waiting() == 0 ? "nothing speaks against it" : "not cleared to fit";
  }

  private Cell cell(DecideModel.Group group) {
    return new Cell(
        Words.capital(group.kind().plural()),
        group.words(),
        () -> open(() -> new DecideSetScreen(context, group.kind())),
        Optional.of(SubjectPictures.of(context, group.kind())),
        OptionalDouble.of(1 - (double) group.undecided() / group.parts()));
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.find(context, scanned, WANTED).ifPresent(this::decide);
  }

  private void decide(int item) {
    open(() -> new DecidePartScreen(context, item));
  }

  private void ask() {
    context.attempt(model::turnAsking);
    context.navigator().changed();
  }
}
