package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting.Unlooked;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.Group;
import wherefrom.ui.subject.Named;
import wherefrom.ui.subject.SubjectIndex;
import wherefrom.ui.subject.Tagged;

/** Where looking begins: by scan, by what is still to do, or by kind and place. */
public final class InspectScreen implements Screen, Scannable {
  private static final int COLUMNS = 3;

  private final Desk desk;
  private final InspectModel model;
  private final TouchKey dirty;
  private final TouchKey left;
  private final TouchKey doubtful;
  private final CellGrid grid;
  private final VBox view;

  public InspectScreen(Desk desk) {
    this.desk = desk;
    model = new InspectModel(desk.getJob());
    dirty = desk.touch().primary("", this::beforeWashing);
    left = desk.touch().primary("", this::unlooked);
    doubtful = desk.touch().primary("", this::doubtful);
    grid = new CellGrid(desk.touch(), COLUMNS);
    view =
        Panes.column(
            desk.scale(),
            desk.touch()
                .text(
                    desk.touch()
                        .brief("Scan a part's tag, or choose what to look at.", "Scan a tag, or:")),
            Tiles.row(desk.scale(), dirty, left, doubtful),
            grid.view());
  }

  /** The screen for the whole engine, or the first open card of one part. */
  public static Screen of(Desk desk, int item) {
    return item > 0
        ? new CardScreen(desk, Subject.ofPart(item), List.of())
        : new InspectScreen(desk);
  }

  @Override
  public String title() {
    return "Inspect";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    dirty.setWords("Before washing: " + model.beforeWashing().size());
    left.setWords("Not looked at: " + model.unlooked().size());
    doubtful.setWords("Suspect or failed: " + model.doubtful().size());
    List<Cell> cells = new ArrayList<>();
    for (Group group : model.groups()) {
      cells.add(new Cell(group.words(), model.count(group), () -> open(group)));
    }
    grid.show(cells);
  }

  @Override
  public void changed() {
    shown();
  }

  @Override
  public void scan(String text) {
    Tagged.find(desk, text).ifPresent(subject -> card(subject, List.of()));
  }

  private void card(Subject subject, List<Subject> round) {
    desk.navigator().open(() -> new CardScreen(desk, subject, round));
  }

  private void open(Group group) {
    List<Subject> all = group.subjects();
    if (all.size() == 1) {
      card(all.get(0), List.of());
      return;
    }
    SubjectIndex.of(desk, group.words(), all, model::standing, one -> card(one, all))
        .ifPresentOrElse(
            index -> new EnginePages(desk, index).open(),
            () -> list(group.words(), "", group::subjects));
  }

  private void list(String title, String none, Supplier<List<Subject>> subjects) {
    desk.navigator()
        .open(() -> new GridScreen(desk, title, none, () -> cells(title, subjects.get())));
  }

  private List<Cell> cells(String title, List<Subject> subjects) {
    boolean mixed = title.isEmpty() || title.startsWith("Suspect");
    return subjects.stream()
        .map(
            subject ->
                new Cell(
                    mixed ? Named.title(desk.state(), subject) : Named.place(desk.state(), subject),
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
    desk.navigator().open(() -> new GridScreen(desk, title, none, () -> waiting(list.get())));
  }

  private List<Cell> waiting(List<Unlooked> list) {
    List<Subject> round = list.stream().map(Unlooked::subject).toList();
    return list.stream()
        .map(
            one ->
                new Cell(
                    Named.title(desk.state(), one.subject()),
                    InspectModel.titles(one.checks()),
                    () -> card(one.subject(), round)))
        .toList();
  }

  private void doubtful() {
    list("Suspect or failed", "Nothing is suspect or failed so far.", model::doubtful);
  }
}
