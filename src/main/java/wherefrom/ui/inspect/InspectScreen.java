package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting.Unlooked;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.sketches.GroupPictures;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.Group;
import wherefrom.ui.subject.MixedIndex;
import wherefrom.ui.subject.Named;
import wherefrom.ui.subject.SubjectIndex;
import wherefrom.ui.subject.Tagged;

/** Where looking begins: by scan, by what is still to do, or by kind and place. */
public final class InspectScreen extends Page implements Scannable {
  private static final int COLUMNS = 2;

  private final InspectModel model;
  private final CellGrid grid;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;

  public InspectScreen(ScreenContext context) {
    super(context, "Inspect");
    model = new InspectModel(context.getJob());
    grid = new CellGrid(touch(), COLUMNS);
    tag = tag(this::next);
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    lay(Panes.column(context.scale(), grid, foot));
  }

  /** The screen for the whole engine, or the first open card of one part. */
  public static Screen of(ScreenContext context, int item) {
    return item > 0
        ? new CardScreen(context, Subject.ofPart(item), List.of())
        : new InspectScreen(context);
  }

  @Override
  public String aside() {
    return model.left();
  }

  @Override
  protected void refresh() {
    List<Unlooked> due = model.due();
    int dirty = model.beforeWashing().size();
    foot.offerTag(!due.isEmpty());
    due.stream()
        .findFirst()
        .ifPresent(
            one ->
                tag.setWords(
                    "Next: " + Words.small(Named.title(context.state(), one.subject())),
                    dirty == 0 ? "" : touch().brief(dirty + " to look at before washing", "")));
    List<KeyRow.Act> acts = new ArrayList<>();
    acts.add(act("Not looked at", this::unlooked));
    if (!model.doubtful().isEmpty()) {
      acts.add(act("Suspect or failed: " + model.doubtful().size(), this::doubtful));
    }
    if (dirty > 0) {
      acts.add(act("Before washing", this::beforeWashing));
    }
    acts.add(act("Castings", () -> open(() -> new CastingsScreen(context))));
    keys.setActs(acts);
    grid.show(model.groups().stream().map(this::cell).toList());
  }

  private Cell cell(Group group) {
    return new Cell(
        group.words(),
        model.count(group),
        () -> open(group),
        picture(group),
        OptionalDouble.of(model.done(group)));
  }

  private Optional<Region> picture(Group group) {
    return GroupPictures.of(context, group.key());
  }

  /** Looks at everything that is due, one after the other. */
  private void next() {
    List<Subject> round = model.due().stream().map(Unlooked::subject).toList();
    round.stream().findFirst().ifPresent(subject -> card(subject, round));
  }

  @Override
  public void scan(Scanned scanned) {
    Tagged.find(context, scanned).ifPresent(subject -> card(subject, List.of()));
  }

  private void card(Subject subject, List<Subject> round) {
    open(() -> new CardScreen(context, subject, round));
  }

  private void open(Group group) {
    open(group.words(), group.subjects());
  }

  private void open(String words, List<Subject> all) {
    if (all.size() == 1) {
      card(all.get(0), List.of());
      return;
    }
    SubjectIndex.of(context, words, all, model::standing, one -> card(one, all))
        .ifPresentOrElse(index -> new EnginePages(context, index).open(), () -> list(words, all));
  }

  /** Where the drawing has no place for them. */
  private void list(String title, List<Subject> subjects) {
    open(() -> new GridScreen(context, title, "", () -> cells(subjects)));
  }

  private List<Cell> cells(List<Subject> subjects) {
    return subjects.stream()
        .map(
            subject ->
                new Cell(
                    Named.place(context.state(), subject),
                    model.state(subject),
                    () -> card(subject, subjects)))
        .toList();
  }

  private void beforeWashing() {
    open("Look before washing", "Nothing is left to look at before washing.", model::beforeWashing);
  }

  private void unlooked() {
    open("Not looked at yet", "Everything that is out is inspected.", model::unlooked);
  }

  private void open(String title, String none, Supplier<List<Unlooked>> list) {
    open(() -> new GridScreen(context, title, none, () -> waiting(list.get())));
  }

  /** One cell for each kind or feature with some left; it opens them on the drawn engine. */
  private List<Cell> waiting(List<Unlooked> list) {
    return model.grouped(list).stream()
        .map(
            left ->
                new Cell(
                    left.words(),
                    left.subjects().size() + " to look at",
                    () -> open(left),
                    picture(left),
                    OptionalDouble.empty()))
        .toList();
  }

  private void doubtful() {
    MixedIndex index =
        new MixedIndex(
            context,
            "Suspect or failed",
            model::doubtful,
            model::standing,
            subject -> card(subject, model.doubtful()));
    new EnginePages(context, index).open(index.side());
  }
}
