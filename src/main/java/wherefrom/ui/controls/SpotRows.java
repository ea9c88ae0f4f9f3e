package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.text.Words;

/**
 * The rows of a drawn engine, from the top of the drawing down, the front of the engine on the
 * left. A person who stands at the flywheel end looks to the left of the drawing: seen from above
 * the left bank is the lower row, seen from below the upper one.
 */
public final class SpotRows {

  /**
   * A row of spots, front to rear.
   *
   * @param words what the row is
   */
  public record Row(String words, List<Spot> spots) {
    public Row {
      spots = List.copyOf(spots);
    }
  }

  private SpotRows() {}

  public static List<Row> of(Layout layout, EngineSide side) {
    return switch (side) {
      case TOP -> banks(layout, true).stream().map(bank -> valves(layout, bank)).toList();
      case BOTTOM -> between(rods(layout), new Row("Mains", List.copyOf(Spots.mains(layout))));
      case BLOCK -> between(bores(layout), new Row("Cam", List.copyOf(Spots.camBearings(layout))));
    };
  }

  private static List<Bank> banks(Layout layout, boolean fromAbove) {
    List<Bank> banks = new ArrayList<>(layout.banks());
    if (fromAbove) {
      Collections.reverse(banks);
    }
    return banks;
  }

  private static Row valves(Layout layout, Bank bank) {
    return new Row(name(layout, bank, "Valves"), List.copyOf(layout.valvesInOrder(bank)));
  }

  private static List<Row> rods(Layout layout) {
    List<Row> rows = new ArrayList<>();
    for (Bank bank : banks(layout, false)) {
      List<Spot> spots = new ArrayList<>();
      for (int cylinder : bank.cylinders()) {
        for (ShellHalf half : ShellHalf.values()) {
          spots.add(new RodSpot(cylinder, half));
        }
      }
      rows.add(new Row(name(layout, bank, "Rods"), spots));
    }
    return rows;
  }

  private static List<Row> bores(Layout layout) {
    List<Row> rows = new ArrayList<>();
    for (Bank bank : banks(layout, true)) {
      List<Spot> spots = List.copyOf(bank.cylinders().stream().map(BoreSpot::new).toList());
      rows.add(new Row(name(layout, bank, "Bores"), spots));
    }
    return rows;
  }

  private static String name(Layout layout, Bank bank, String single) {
    if (layout.banks().size() == 1) {
      return single;
    }
    return Words.capital(bank.name()) + " bank";
  }

  /** The middle row stands between the banks, or below a single one. */
  private static List<Row> between(List<Row> banks, Row middle) {
    List<Row> rows = new ArrayList<>(banks);
    if (!middle.spots().isEmpty()) {
      rows.add(1, middle);
    }
    return rows;
  }
}
