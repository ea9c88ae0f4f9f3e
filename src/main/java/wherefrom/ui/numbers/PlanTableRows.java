package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wherefrom.engine.ValveSide;
import wherefrom.job.numbers.MeasuredRoom;
import wherefrom.job.numbers.PlanEffects;
import wherefrom.quantity.Unit;
import wherefrom.workings.Note;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.plan.Margin;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;

/** The rows of the plan's table, as they are shown: a cell for each column. */
final class PlanTableRows {
  static final String RATIO = "ratio";
  static final String UNCUT = "ratio-uncut";

  /** Results in the order in which one leads to the next, with their names in a narrow table. */
  private static final Map<String, String> RESULTS = new LinkedHashMap<>();

  static {
    RESULTS.put("head-cut", "Head cut");
    RESULTS.put("intake-face", "Intake face cut");
    RESULTS.put("intake-rails", "End rail cut");
    RESULTS.put("pushrod-change", "Pushrod length");
    RESULTS.put("piston-to-intake", "Piston to intake");
    RESULTS.put("piston-to-exhaust", "Piston to exhaust");
    RESULTS.put("piston-to-head", "Piston to head");
    RESULTS.put("lift", "Valve lift");
    RESULTS.put("coil-bind", "To coil bind");
    RESULTS.put("retainer-to-seal", "Retainer to seal");
    RESULTS.put("rocker-slot", "Rocker slot");
  }

  /** The results that are read by degrees as well, around overlap. */
  private static final Map<Gap, ValveSide> READ =
      Map.of(Gap.PISTON_TO_INTAKE, ValveSide.INTAKE, Gap.PISTON_TO_EXHAUST, ValveSide.EXHAUST);

  /** One cell: a figure with its unit, {@code 0.0416 ± 0.0033}, or words that have none. */
  record Cell(String figure, Optional<Unit> unit, Optional<Margin> marked) {
    static Cell of(String words) {
      return new Cell(words, Optional.empty(), Optional.empty());
    }

    String words() {
      return unit.map(shown -> figure + " " + shown.symbol()).orElse(figure).strip();
    }

    Cell withoutUnit() {
      return new Cell(figure, Optional.empty(), marked);
    }

    /** {@code under 0.080 in}, {@code near 0.080 in}; empty where nothing is to be said. */
    String mark() {
      return marked.map(Cell::words).orElse("");
    }

    private static String words(Margin margin) {
      return switch (margin.standing()) {
        case CLEAR -> "";
        case UNDECIDED -> "near " + margin.least().words();
        case NOT_KNOWN -> "not known, measure again";
        case UNDER -> "under " + margin.least().words();
        case TOUCHES -> margin.gap().touchWords();
      };
    }
  }

  /**
   * One row; a cell for each column of {@link PlanModel#columns()}.
   *
   * @param unit the unit that all its figures share, and that stands once, in its name
   * @param ratio whether it is one of those of the ratio, which has a drawing of its own
   */
  record Row(String title, Optional<Unit> unit, boolean ratio, List<Cell> cells) {
    Row {
      cells = List.copyOf(cells);
    }

    private static Row of(String title, List<Cell> cells) {
      return new Row(title, Optional.empty(), false, cells);
    }

    private static Row ofRatio(String title, List<Cell> cells) {
      return new Row(title, Optional.empty(), true, cells);
    }

    /** {@code Head cut, in}. */
    String name() {
      return title + unit.map(one -> ", " + one.symbol()).orElse("");
    }

    /** The same with its unit in its name even where some cells have words in place of figures. */
    Row withUnitAside() {
      return with(cells.stream().filter(cell -> cell.unit().isPresent()));
    }

    /** A unit that all figures of the row share stands once, in its name. */
    static Row ofFigures(String title, List<Cell> cells) {
      return of(title, cells).with(cells.stream().filter(cell -> !cell.figure().isEmpty()));
    }

    private Row with(Stream<Cell> shown) {
      List<Optional<Unit>> units = shown.map(Cell::unit).distinct().toList();
      Optional<Unit> shared =
          units.size() == 1
              ? units.get(0).filter(one -> !one.symbol().isEmpty())
              : Optional.empty();
      return shared.isEmpty()
          ? this
          : new Row(title, shared, ratio, cells.stream().map(Cell::withoutUnit).toList());
    }
  }

  private final List<PlanAnswer> answers;
  private final Function<PlanAnswer, Optional<PlanEffects>> findEffects;
  private final Function<ValveSide, Optional<MeasuredRoom>> findRead;

  /**
   * @param answers one for each column
   * @param findEffects what follows from a column; empty where nothing does
   * @param findRead the least room to a valve that was read; empty where nothing was
   */
  PlanTableRows(
      List<PlanAnswer> answers,
      Function<PlanAnswer, Optional<PlanEffects>> findEffects,
      Function<ValveSide, Optional<MeasuredRoom>> findRead) {
    this.answers = List.copyOf(answers);
    this.findEffects = findEffects;
    this.findRead = findRead;
  }

  /** Every row that has something to show. */
  List<Row> all() {
    List<Row> rows = new ArrayList<>(ratios(answers));
    RESULTS.forEach(
        (key, name) -> {
          List<Cell> cells = answers.stream().map(answer -> cell(answer, key)).toList();
          if (cells.stream().anyMatch(cell -> !cell.words().isEmpty())) {
            rows.add(Row.ofFigures(name, cells));
          }
          read(key).ifPresent(rows::add);
        });
    List<Optional<PlanEffects>> effects = answers.stream().map(findEffects).toList();
    rows.add(row("To buy and do", effects, known -> known.lines().size() + " things"));
    rows.add(row("To check", effects, known -> known.checks().size() + " checks"));
    rows.add(row("Money", effects, PlanEffects::sumWords));
    List<Cell> lacking = answers.stream().map(answer -> Cell.of(lacking(answer))).toList();
    if (lacking.stream().anyMatch(cell -> !cell.words().isEmpty())) {
      rows.add(Row.of("Not worked out", lacking));
    }
    return rows;
  }

  /** What was read on the engine stands below what the plan says, in the column of now. */
  private Optional<Row> read(String key) {
    return READ.entrySet().stream()
        .filter(read -> read.getKey().key().equals(key))
        .findFirst()
        .flatMap(read -> findRead.apply(read.getValue()).map(room -> row(room, read.getKey())));
  }

  private Row row(MeasuredRoom read, Gap gap) {
    Optional<Margin> marked =
        Optional.of(new Margin(read.value(), gap))
            .filter(margin -> margin.standing() != Margin.Standing.CLEAR);
    List<Cell> cells = new ArrayList<>(Collections.nCopies(answers.size(), Cell.of("")));
    cells.set(0, new Cell(read.figure(), Optional.of(read.value().unit()), marked));
    return Row.ofFigures("Piston to " + read.valve() + ", measured", cells);
  }

  /** One row while nothing is cut; else the ratio without the cut and the one after it. */
  private static List<Row> ratios(List<PlanAnswer> answers) {
    List<Cell> after = answers.stream().map(answer -> cell(answer, RATIO)).toList();
    List<Cell> uncut = answers.stream().map(answer -> cell(answer, UNCUT)).toList();
    List<Cell> plain = new ArrayList<>();
    List<Cell> cut = new ArrayList<>();
    for (int at = 0; at < answers.size(); at++) {
      boolean none = uncut.get(at).words().isEmpty();
      plain.add(none ? after.get(at) : uncut.get(at));
      boolean asItIs = none && !after.get(at).words().isEmpty();
      cut.add(none ? Cell.of(asItIs ? "no cut" : "") : after.get(at));
    }
    List<Row> rows = new ArrayList<>();
    boolean anyCut = uncut.stream().anyMatch(cell -> !cell.words().isEmpty());
    if (plain.stream().anyMatch(cell -> !cell.words().isEmpty())) {
      rows.add(Row.ofRatio(anyCut ? "Ratio, no cut" : "Ratio", plain));
    }
    if (cut.stream().anyMatch(cell -> cell.unit().isPresent())) {
      rows.add(Row.ofRatio("Ratio after the cut", cut));
    }
    return rows;
  }

  private static Row row(
      String name, List<Optional<PlanEffects>> effects, Function<PlanEffects, String> words) {
    return Row.of(
        name, effects.stream().map(each -> Cell.of(each.map(words).orElse("–"))).toList());
  }

  private static Cell cell(PlanAnswer answer, String key) {
    if (!(answer instanceof PlanColumn column)) {
      return Cell.of(key.equals(RATIO) ? "cannot be" : "");
    }
    Optional<Margin> marked =
        column.listMarked().stream().filter(m -> m.gap().key().equals(key)).findFirst();
    return column
        .result()
        .findValue(key)
        .map(value -> new Cell(signed(value), Optional.of(value.unit()), marked))
        .or(
            () ->
                column
                    .findAtLeast(key)
                    .map(
                        value ->
                            new Cell("≥ " + value.figure(), Optional.of(value.unit()), marked)))
        .orElseGet(() -> Cell.of(column.isNotKnown(key) ? "not known" : ""));
  }

  /** With the sign that figures have, which is no hyphen. */
  private static String signed(ResultValue value) {
    return value.figure().replace('-', '−');
  }

  /** How many results lack a figure, or why a column cannot be. */
  private static String lacking(PlanAnswer answer) {
    if (!(answer instanceof PlanColumn column)) {
      return "see Details";
    }
    long count = needs(column).size();
    boolean nothing =
        column.result().values().stream()
            .noneMatch(
                v ->
                    RESULTS.containsKey(v.key()) || v.key().equals(RATIO) || v.key().equals(UNCUT));
    if (nothing) {
      return "begin with Figures";
    }
    return count == 0 ? "" : count + ", see Details";
  }

  private static List<Note> needs(PlanColumn column) {
    return column.result().notes().stream()
        .filter(note -> note.kind() == Note.Kind.LACKING)
        .toList();
  }
}
