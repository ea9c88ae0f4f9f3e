package wherefrom.ui.before;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Subject;
import wherefrom.job.Caution;
import wherefrom.text.Words;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.inspect.CardScreen;
import wherefrom.ui.measure.CompareScreen;
import wherefrom.ui.measure.LimitsScreen;
import wherefrom.ui.measure.ReadingsScreen;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.SubjectIndex;

/** The tests of an engine that is still together: each a key, and what they point to. */
public final class BeforeScreen extends Page {
  private static final int COLUMNS = 2;
  private static final String DRY = "compression-dry";

  private final BeforeModel model;
  private final CellGrid grid;
  private final TagKey tag;

  public BeforeScreen(ScreenContext context) {
    super(context, "Before teardown");
    model = new BeforeModel(context.getJob());
    grid = new CellGrid(touch(), COLUMNS);
    tag = tag(this::goOn);
    KeyRow keys =
        KeyRow.of(
            context,
            act("Cautions", () -> open(() -> new CautionScreen(context, Caution.beforeTeardown()))),
            act("Compare", () -> open(() -> new CompareScreen(context, BeforeModel.plan(DRY)))),
            act("Limits", () -> open(() -> new LimitsScreen(context))));
    lay(Panes.column(context.scale(), grid, new Foot(context, tag, keys)));
  }

  @Override
  public String aside() {
    return model.count(DRY);
  }

  @Override
  protected void refresh() {
    int signs = model.signs().size();
    Optional<Subject> next = model.next(DRY);
    String found = Words.count(signs, "sign") + " found";
    tag.setWords(
        signs > 0
            ? touch().brief(found, "See " + Words.count(signs, "sign"))
            : next.isPresent() ? "Next: compression, dry" : "Nothing stands out",
        signs > 0 ? touch().brief("see what it points to", "") : "");
    List<Cell> cells = new ArrayList<>();
    for (String plan : List.of(DRY, "compression-wet", "leak-down", "leak-percent")) {
      cells.add(
          new Cell(
              BeforeModel.plan(plan).title(),
              model.count(plan),
              () -> byCylinder(plan),
              Optional.empty(),
              OptionalDouble.of(model.done(plan))));
    }
    cells.add(
        new Cell(
            "Where it leaks",
            model.countHeard(),
            this::leaks,
            Optional.empty(),
            OptionalDouble.of(model.doneHeard())));
    cells.add(new Cell("Oil pressure", model.countOil(), this::oil));
    cells.add(new Cell("Vacuum", model.value("vacuum-idle"), () -> read("vacuum-idle")));
    cells.add(new Cell("What the needle does", model.heard(BeforeModel.RUNNING), this::needle));
    cells.add(new Cell("Photographs first", model.heard(BeforeModel.OUTSIDE), this::photographs));
    grid.show(cells);
  }

  private void goOn() {
    if (model.signs().isEmpty()) {
      model.next(DRY).ifPresentOrElse(at -> read(at, DRY), this::signs);
    } else {
      signs();
    }
  }

  private void signs() {
    open(() -> new SignsScreen(context));
  }

  private void byCylinder(String plan) {
    index(BeforeModel.plan(plan).title(), at -> model.standing(at, plan), at -> read(at, plan));
  }

  private void leaks() {
    index("Where it leaks", model::heardState, at -> open(() -> new HeardScreen(context, at)));
  }

  private void index(String title, Function<Subject, PartState> state, Consumer<Subject> opened) {
    SubjectIndex.of(context, title, model.cylinders(), state, opened)
        .ifPresent(index -> new EnginePages(context, index).open());
  }

  private void oil() {
    open(
        () ->
            new GridScreen(
                context,
                "Oil pressure",
                "",
                () ->
                    BeforeModel.OIL.stream()
                        .map(
                            plan ->
                                new Cell(
                                    BeforeModel.plan(plan).title(),
                                    model.value(plan),
                                    () -> read(plan)))
                        .toList()));
  }

  private void needle() {
    open(() -> new HeardScreen(context, BeforeModel.RUNNING));
  }

  private void photographs() {
    open(() -> new CardScreen(context, BeforeModel.OUTSIDE, List.of()));
  }

  private void read(String plan) {
    read(BeforeModel.RUNNING, plan);
  }

  private void read(Subject at, String plan) {
    open(() -> new ReadingsScreen(context, at, plan));
  }
}
