package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutFault;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;

/** The fields of a layout as they stand, each with what is wrong with it. */
final class LayoutFields {

  /** What a row edits. */
  enum What {
    TITLE,
    NAME,
    ARRANGEMENT,
    VEE,
    BANK_NAME,
    CYLINDERS,
    VALVES,
    LEADING_BANK,
    FIRING_ORDER,
    MAINS,
    THRUST_MAIN,
    MAIN_CAPS,
    ROD_JOURNALS,
    CAM_BEARINGS,
    LIFTERS,
    ROCKERS
  }

  /**
   * A row.
   *
   * @param bank which bank it is about, 0 or 1; 0 where it is about none
   * @param value as it stands, also what an editor starts with
   * @param faults sentences, none where the field is sound
   */
  record Row(What what, int bank, String heading, String value, List<String> faults) {
    Row {
      faults = List.copyOf(faults);
    }
  }

  private final Layout layout;
  private final List<LayoutFault> faults;
  private final List<Row> rows = new ArrayList<>();

  private LayoutFields(LayoutDraft draft) {
    this.layout = draft.layout();
    this.faults = draft.faults();
  }

  static List<Row> of(LayoutDraft draft) {
    LayoutFields fields = new LayoutFields(draft);
    fields.names();
    fields.banks();
    fields.bearings();
    fields.valvetrain();
    return List.copyOf(fields.rows);
  }

  private void add(What what, int bank, String heading, String value, String field) {
    rows.add(new Row(what, bank, heading, value, sentences(field)));
  }

  private List<String> sentences(String field) {
    return faults.stream()
        .filter(fault -> fault.field().equals(field))
        .map(LayoutFault::sentence)
        .toList();
  }

  private void names() {
    add(What.TITLE, 0, "Title", layout.title(), "title");
    add(What.NAME, 0, "Name in files", layout.name(), "name");
    add(What.ARRANGEMENT, 0, "Arrangement", layout.arrangement().word(), "banks");
    if (layout.arrangement() == Arrangement.V) {
      add(What.VEE, 0, "Degrees between the banks", String.valueOf(layout.vee()), "vee");
    }
  }

  private void banks() {
    for (int at = 0; at < layout.banks().size(); at++) {
      Bank bank = layout.banks().get(at);
      String of = layout.banks().size() == 1 ? "" : ", " + bank.name() + " bank";
      if (layout.banks().size() > 1) {
        add(
            What.BANK_NAME,
            at,
            "Name of the " + (at == 0 ? "left" : "right") + " bank",
            bank.name(),
            "");
      }
      add(What.CYLINDERS, at, "Cylinders front to rear" + of, words(bank.cylinders()), "cylinders");
      add(What.VALVES, at, "Valves front to rear" + of, bank.valves(), "valves");
    }
    if (layout.banks().size() > 1) {
      add(What.LEADING_BANK, 0, "Leading bank", layout.leadingBank(), "leadingBank");
    }
    add(What.FIRING_ORDER, 0, "Firing order", words(layout.firingOrder()), "firingOrder");
  }

  private void bearings() {
    add(What.MAINS, 0, "Main bearings", String.valueOf(layout.mains()), "mains");
    String thrust = String.valueOf(layout.thrustMain());
    add(What.THRUST_MAIN, 0, "Main bearing that takes the thrust", thrust, "thrustMain");
    String caps = layout.mainCaps() ? "caps" : "a split case, no caps";
    add(What.MAIN_CAPS, 0, "Main bearings held by", caps, "");
    String pins = String.valueOf(layout.rodJournals());
    add(What.ROD_JOURNALS, 0, "Crank pins", pins, "rodJournals");
    String cams = String.valueOf(layout.camBearings());
    add(What.CAM_BEARINGS, 0, "Cam bearings", cams, "camBearings");
  }

  private void valvetrain() {
    add(What.LIFTERS, 0, "Lifters", layout.lifters() == LifterType.FLAT ? "flat" : "roller", "");
    String rockers =
        layout.rockers() == RockerMount.INDIVIDUAL ? "each on its own pivot" : "on a shaft";
    add(What.ROCKERS, 0, "Rockers", rockers, "");
  }

  private static String words(List<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }
}
