package wherefrom.ui.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
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
import wherefrom.ui.subject.Named;
import wherefrom.ui.subject.SubjectIndex;
import wherefrom.ui.subject.Tagged;

/** Where measuring begins: by scan or by what is measured; tools, limits, sets, clearances. */
public final class MeasureScreen extends Page implements Scannable {
  private static final int COLUMNS = 2;

  private final MeasureModel model;
  private final CellGrid grid;
  private final TagKey tag;
  private final Foot foot;
  private Runnable first = () -> {};

  public MeasureScreen(ScreenContext context) {
    super(context, "Measure");
    model = new MeasureModel(context.getJob());
    grid = new CellGrid(touch(), COLUMNS);
    tag = tag(() -> first.run());
    foot =
        new Foot(
            context,
            tag,
            KeyRow.of(
                context,
                act("Tools", () -> open(() -> new ToolsScreen(context))),
                act("Limits", () -> open(() -> new LimitsScreen(context))),
                act("Clearances", () -> open(() -> new ClearancesScreen(context))),
                act("Compare sets", this::compare)));
    lay(Panes.column(context.scale(), grid, foot));
  }

  /** The screen for the whole engine, or what can be measured on one part. */
  public static Screen of(ScreenContext context, int item) {
    if (item == 0) {
      return new MeasureScreen(context);
    }
    Subject subject = Subject.ofPart(item);
    return plans(context, subject);
  }

  /** A subject's readings by a plan where it suits, else what can be measured on it. */
  public static Screen of(ScreenContext context, Subject subject, ReadingPlan plan) {
    boolean suits = new MeasureModel(context.getJob()).plans(subject).contains(plan);
    return suits ? new ReadingsScreen(context, subject, plan.key()) : plans(context, subject);
  }

  /** The plans for a subject; where there is one alone, its readings. */
  private static Screen plans(ScreenContext context, Subject subject) {
    return of(context, Named.title(context.state(), subject), List.of(subject));
  }

  /** The plans for several subjects of one thing; where there is one plan alone, its readings. */
  public static Screen of(ScreenContext context, String thing, List<Subject> subjects) {
    List<Read> reads = reads(context, subjects);
    if (reads.size() == 1) {
      return reads.get(0).screen(context);
    }
    return new GridScreen(
        context,
        "Measure " + thing,
        "There is nothing to measure on it. Use Inspect.",
        () -> reads.stream().map(read -> read.cell(context)).toList());
  }

  private static List<Read> reads(ScreenContext context, List<Subject> subjects) {
    MeasureModel model = new MeasureModel(context.getJob());
    return subjects.stream()
        .flatMap(one -> model.plans(one).stream().map(plan -> new Read(one, plan)))
        .toList();
  }

  /** A subject and what is read of it. */
  private record Read(Subject subject, ReadingPlan plan) {
    Screen screen(ScreenContext context) {
      return new ReadingsScreen(context, subject, plan.key());
    }

    Cell cell(ScreenContext context) {
      String state = new MeasureModel(context.getJob()).state(plan, subject);
      return new Cell(plan.title(), state, () -> context.navigator().open(() -> screen(context)));
    }
  }

  private int open() {
    return model.undecided().count();
  }

  @Override
  public String aside() {
    return open() + " undecided";
  }

  @Override
  protected void refresh() {
    Optional<MeasureModel.Due> due = model.due();
    foot.offerTag(open() > 0 || due.isPresent());
    if (open() > 0) {
      tag.setWords("Undecided: " + open(), touch().brief("too near a limit to say", ""));
      first = this::undecided;
    } else if (due.isPresent()) {
      tag.setWords(
          "Next: " + Words.small(Named.title(context.state(), due.get().subject())),
          touch().brief(due.get().plan().title(), ""));
      first = () -> read(due.get().subject(), due.get().plan());
    }
    grid.show(model.plans().stream().map(this::cell).toList());
  }

  private Cell cell(ReadingPlan plan) {
    return new Cell(
        model.name(plan),
        model.count(plan),
        () -> open(plan),
        GroupPictures.of(context, plan.of()),
        OptionalDouble.of(model.done(plan)));
  }

  @Override
  public void scan(Scanned scanned) {
    Tagged.find(context, scanned)
        .ifPresent(subject -> context.navigator().open(() -> plans(context, subject)));
  }

  private void open(ReadingPlan plan) {
    List<Subject> subjects = model.subjects(plan);
    if (subjects.size() == 1) {
      read(subjects.get(0), plan);
      return;
    }
    SubjectIndex.of(
            context,
            model.name(plan),
            subjects,
            subject -> model.standing(plan, subject),
            subject -> read(subject, plan))
        .ifPresentOrElse(
            index -> new EnginePages(context, index).open(), () -> list(plan, subjects));
  }

  /** Where the drawing has no place for them. */
  private void list(ReadingPlan plan, List<Subject> subjects) {
    context
        .navigator()
        .open(() -> new GridScreen(context, model.name(plan), "", () -> cells(plan, subjects)));
  }

  private List<Cell> cells(ReadingPlan plan, List<Subject> subjects) {
    return subjects.stream()
        .map(
            subject ->
                new Cell(
                    Named.place(context.state(), subject),
                    model.state(plan, subject),
                    () -> read(subject, plan)))
        .toList();
  }

  private void read(Subject subject, ReadingPlan plan) {
    context.navigator().open(() -> new ReadingsScreen(context, subject, plan.key()));
  }

  private void compare() {
    context
        .navigator()
        .open(
            () ->
                new GridScreen(
                    context,
                    "Compare sets",
                    "Measure at least two of a kind, such as pushrod lengths. They are compared"
                        + " here.",
                    () ->
                        model.comparable().stream()
                            .map(
                                plan ->
                                    new Cell(
                                        model.name(plan),
                                        model.count(plan),
                                        () ->
                                            context
                                                .navigator()
                                                .open(() -> new CompareScreen(context, plan))))
                            .toList()));
  }

  private void undecided() {
    context
        .navigator()
        .open(
            () ->
                new GridScreen(
                    context,
                    "Undecided",
                    "No result is undecided.",
                    () -> new UndecidedCells(context, model).list()));
  }
}
