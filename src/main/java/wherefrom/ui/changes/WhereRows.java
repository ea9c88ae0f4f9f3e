package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Reach;
import wherefrom.text.Words;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.SpotRows;

/** What a change can be about, in rows as the engine lies, its front on the left. */
final class WhereRows {

  /** One thing to point at: its name in a change, and what its key says. */
  record Cell(String where, String words) {}

  /** A row of them. */
  record Row(String words, List<Cell> cells) {
    Row {
      cells = List.copyOf(cells);
    }
  }

  private WhereRows() {}

  /** From which side the rows for a change of this reach are seen. */
  static EngineSide side(Reach reach) {
    return switch (reach) {
      case ROD_OR_MAIN -> EngineSide.BOTTOM;
      case CYLINDER -> EngineSide.BLOCK;
      default -> EngineSide.TOP;
    };
  }

  /** The rows for a change of this reach. */
  static List<Row> of(Layout layout, Reach reach) {
    return switch (reach) {
      case WHOLE, PLACE -> List.of();
      case BANK -> banks(layout);
      case VALVE -> spots(SpotRows.of(layout, EngineSide.TOP));
      case CYLINDER -> cylinders(layout, fromAbove(layout), "B", "Bore ");
      case ROD_OR_MAIN -> {
        List<Row> rows = new ArrayList<>(cylinders(layout, layout.banks(), "R", "Rod "));
        rows.add(Math.min(1, rows.size()), new Row("Mains", mains(layout)));
        yield rows;
      }
    };
  }

  /** The rows of the spots where a kind of part can live. */
  static List<Row> of(Layout layout, PartKind kind) {
    List<Row> rows = new ArrayList<>();
    for (SpotRows.Row row : SpotRows.of(layout, EngineSide.of(kind))) {
      List<Spot> spots = row.spots().stream().filter(spot -> Place.canLive(kind, spot)).toList();
      if (!spots.isEmpty()) {
        rows.addAll(spots(List.of(new SpotRows.Row(row.words(), spots))));
      }
    }
    return rows;
  }

  private static List<Row> spots(List<SpotRows.Row> rows) {
    return rows.stream()
        .map(
            row ->
                new Row(
                    row.words(),
                    row.spots().stream()
                        .map(spot -> new Cell(spot.key(), spot.figures()))
                        .toList()))
        .toList();
  }

  /** A row a bank, as seen from above. */
  private static List<Row> banks(Layout layout) {
    List<Row> rows = new ArrayList<>();
    for (Bank bank : fromAbove(layout)) {
      boolean one = layout.banks().size() == 1;
      String words = one ? "The whole row" : Words.capital(bank.name()) + " bank";
      rows.add(new Row("", List.of(new Cell(bank.name(), words))));
    }
    return rows;
  }

  /** The left bank is the lower row. */
  private static List<Bank> fromAbove(Layout layout) {
    List<Bank> banks = new ArrayList<>(layout.banks());
    Collections.reverse(banks);
    return banks;
  }

  private static List<Row> cylinders(Layout layout, List<Bank> banks, String letter, String word) {
    List<Row> rows = new ArrayList<>();
    for (Bank bank : banks) {
      String name = layout.banks().size() == 1 ? "" : Words.capital(bank.name()) + " bank";
      List<Cell> cells =
          bank.cylinders().stream().map(at -> new Cell(letter + at, word + at)).toList();
      rows.add(new Row(name, cells));
    }
    return rows;
  }

  private static List<Cell> mains(Layout layout) {
    return IntStream.rangeClosed(1, layout.mains())
        .mapToObj(at -> new Cell("M" + at, "Main " + at))
        .toList();
  }
}
