package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.text.UsualWords;
import wherefrom.text.Words;
import wherefrom.workings.torque.BoltPattern;
import wherefrom.workings.torque.StageReading;

/** A torque card while it is being written. Nothing in it is taken for granted. */
final class DraftModel {
  /** As service information states them. */
  static final UsualWords THREADS =
      UsualWords.orOther("dry", "oiled", "thread compound", "thread sealer", "assembly lubricant");

  private String fastener = "";
  private int rows;
  private int columns;
  private List<Integer> order = List.of();
  private String orderFrom = "";
  private String threads = "";
  private final List<String> stages = new ArrayList<>();
  private SequenceModel sequence = new SequenceModel();
  private String source = "";

  /** Sets of bolts that the layout has. */
  static UsualWords fasteners(Layout layout) {
    List<String> all = new ArrayList<>();
    for (Bank bank : layout.banks()) {
      all.add(layout.banks().size() == 1 ? "head bolts" : "head bolts, " + bank.name());
    }
    String mains = layout.mainCaps() ? "main caps" : "case bolts";
    all.addAll(List.of(mains, "rod caps", "intake manifold"));
    return UsualWords.orOther(all);
  }

  String fastener() {
    return fastener;
  }

  void fastener(String words) {
    fastener = words.strip();
  }

  int rows() {
    return rows;
  }

  int columns() {
    return columns;
  }

  /** A grid of another size; the order begins anew, from the centre outward. */
  String size(int newRows, int newColumns) {
    if (!BoltPattern.isSize(newRows, newColumns)) {
      return "A card has 1 to "
          + BoltPattern.MOST_ROWS
          + " rows of 1 to "
          + BoltPattern.MOST_COLUMNS
          + " bolts: turn the drawing, or write two cards.";
    }
    rows = newRows;
    columns = newColumns;
    sequence = new SequenceModel();
    centreOutward();
    return "";
  }

  /** The bolts that were touched so far, of the size that stands. */
  SequenceModel sequence() {
    return sequence;
  }

  boolean hasSize() {
    return rows > 0;
  }

  String sizeWords() {
    return hasSize() ? Words.count(rows, "row") + " of " + columns : "";
  }

  void centreOutward() {
    order = BoltPattern.ofRectangle(rows, columns).positions();
    orderFrom = "";
  }

  void order(List<Integer> positions, String from) {
    order = List.copyOf(positions);
    orderFrom = from.strip();
  }

  String orderWords() {
    if (order.isEmpty()) {
      return "";
    }
    return orderFrom.isEmpty()
        ? "from the center outward: common practice, no source"
        : "your own, " + order.size() + " bolts: " + orderFrom;
  }

  /** The same without its source. */
  String orderBrief() {
    return orderWords().split(":", -1)[0];
  }

  String threads() {
    return threads;
  }

  void threads(String words) {
    threads = words.strip();
  }

  List<String> stages() {
    return List.copyOf(stages);
  }

  /** Adds a stage as typed; what is wrong with it, or nothing. */
  String add(String stage) {
    if (StageReading.of(stage) instanceof StageReading.NotUnderstood not) {
      return not.sentence();
    }
    stages.add(stage);
    return "";
  }

  void removeLastStage() {
    if (!stages.isEmpty()) {
      stages.remove(stages.size() - 1);
    }
  }

  /** Whether anything was said of it yet. */
  boolean isBegun() {
    return hasSize() || !stages.isEmpty() || !(fastener + threads + source).isEmpty();
  }

  String source() {
    return source;
  }

  void source(String words) {
    source = words.strip();
  }

  TorqueStep begin(TorqueBook book) {
    return book.begin(
        new CardTyped(fastener, rows, columns, order, orderFrom, threads, stages, source));
  }
}
