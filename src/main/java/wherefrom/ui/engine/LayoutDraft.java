package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutCheck;
import wherefrom.engine.LayoutFault;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;

/** A layout that is being edited; it may be wrong for the time being and says where. */
public final class LayoutDraft {
  private static final int MOST_CYLINDERS = 16;

  private Layout layout;

  public LayoutDraft(Layout start) {
    layout = start;
  }

  public Layout layout() {
    return layout;
  }

  /** Starts from another layout. */
  void replace(Layout other) {
    layout = other;
  }

  public List<LayoutFault> faults() {
    return LayoutCheck.faults(layout);
  }

  void name(String name) {
    layout = layout.copyAs(name, layout.title());
  }

  void title(String title) {
    layout = layout.copyAs(layout.name(), title);
  }

  /** Changes how the banks stand; cylinders and valves are dealt out to the banks anew. */
  void arrange(Arrangement arrangement) {
    boolean inline = arrangement == Arrangement.INLINE;
    boolean single = layout.banks().size() == 1;
    List<Bank> banks = layout.banks();
    if (inline && !single) {
      banks = List.of(joined(banks));
    } else if (!inline && single) {
      banks = split(banks.get(0));
    }
    String leading = banks.equals(layout.banks()) ? layout.leadingBank() : banks.get(0).name();
    boolean same = arrangement == layout.arrangement();
    int usual = Layout.usualVee(arrangement, layout.cylinders().size(), layout.rodJournals());
    int vee = same ? layout.vee() : usual;
    layout = with(arrangement, vee, banks, leading, layout.firingOrder());
  }

  private static Bank joined(List<Bank> banks) {
    List<Integer> cylinders =
        banks.stream().flatMap(bank -> bank.cylinders().stream()).sorted().toList();
    StringBuilder valves = new StringBuilder();
    banks.forEach(bank -> valves.append(bank.valves()));
    return new Bank("single", cylinders, valves.toString());
  }

  private static List<Bank> split(Bank bank) {
    int half = (bank.cylinders().size() + 1) / 2;
    int valves = Math.min(2 * half, bank.valves().length());
    return List.of(
        new Bank("left", bank.cylinders().subList(0, half), bank.valves().substring(0, valves)),
        new Bank(
            "right",
            bank.cylinders().subList(half, bank.cylinders().size()),
            bank.valves().substring(valves)));
  }

  void bankName(int at, String name) {
    Bank old = layout.banks().get(at);
    String leading = layout.leadingBank().equals(old.name()) ? name : layout.leadingBank();
    List<Bank> banks = replaced(at, new Bank(name, old.cylinders(), old.valves()));
    layout = with(layout.arrangement(), layout.vee(), banks, leading, layout.firingOrder());
  }

  /**
   * Sets a bank's cylinder numbers, front to rear. Where their count changes, the valve order is
   * cut or gets EI for each new one, to be put right.
   *
   * @throws IllegalArgumentException with a sentence when the text is no list of numbers
   */
  void cylinders(int at, String text) {
    Bank old = layout.banks().get(at);
    List<Integer> cylinders = numbers("cylinders", text);
    int wanted = 2 * cylinders.size();
    String valves = old.valves();
    String fitting =
        valves.length() > wanted
            ? valves.substring(0, wanted)
            : valves + "EI".repeat((wanted - valves.length()) / 2);
    List<Bank> banks = replaced(at, new Bank(old.name(), cylinders, fitting));
    layout =
        with(layout.arrangement(), layout.vee(), banks, layout.leadingBank(), layout.firingOrder());
  }

  void valves(int at, String text) {
    Bank old = layout.banks().get(at);
    String valves = text.toUpperCase(Locale.ROOT).replaceAll("[\\s,.-]", "");
    List<Bank> banks = replaced(at, new Bank(old.name(), old.cylinders(), valves));
    layout =
        with(layout.arrangement(), layout.vee(), banks, layout.leadingBank(), layout.firingOrder());
  }

  void leadingBank(String name) {
    layout = with(layout.arrangement(), layout.vee(), layout.banks(), name, layout.firingOrder());
  }

  /**
   * Sets the firing order.
   *
   * @throws IllegalArgumentException with a sentence when the text is no list of numbers
   */
  void firingOrder(String text) {
    List<Integer> order = numbers("firingOrder", text);
    layout = with(layout.arrangement(), layout.vee(), layout.banks(), layout.leadingBank(), order);
  }

  /** Sets the angle between the banks, in degrees. */
  void vee(int degrees) {
    layout =
        with(
            layout.arrangement(),
            degrees,
            layout.banks(),
            layout.leadingBank(),
            layout.firingOrder());
  }

  private List<Bank> replaced(int at, Bank bank) {
    List<Bank> banks = new ArrayList<>(layout.banks());
    banks.set(at, bank);
    return banks;
  }

  private static List<Integer> numbers(String field, String text) {
    List<String> words =
        Stream.of(text.split("[^0-9A-Za-z]+", -1)).filter(word -> !word.isEmpty()).toList();
    if (words.size() > MOST_CYLINDERS || words.stream().anyMatch(word -> !isNumber(word))) {
      throw new IllegalArgumentException(
          field + ": type cylinder numbers with spaces between, such as 1 3 5 7.");
    }
    return words.stream().map(Integer::valueOf).toList();
  }

  private static boolean isNumber(String word) {
    return word.matches("[0-9]{1,2}");
  }

  /** The whole numbers that can be set. */
  enum Count {
    MAINS,
    THRUST_MAIN,
    ROD_JOURNALS,
    CAM_BEARINGS
  }

  int count(Count which) {
    return switch (which) {
      case MAINS -> layout.mains();
      case THRUST_MAIN -> layout.thrustMain();
      case ROD_JOURNALS -> layout.rodJournals();
      case CAM_BEARINGS -> layout.camBearings();
    };
  }

  void count(Count which, int number) {
    Map<Count, Integer> counts = counts();
    counts.put(which, number);
    layout = with(counts, layout.mainCaps(), layout.lifters(), layout.rockers());
  }

  void mainCaps(boolean caps) {
    layout = with(counts(), caps, layout.lifters(), layout.rockers());
  }

  void lifters(LifterType lifters) {
    layout = with(counts(), layout.mainCaps(), lifters, layout.rockers());
  }

  void rockers(RockerMount rockers) {
    layout = with(counts(), layout.mainCaps(), layout.lifters(), rockers);
  }

  private Map<Count, Integer> counts() {
    Map<Count, Integer> counts = new EnumMap<>(Count.class);
    for (Count each : Count.values()) {
      counts.put(each, count(each));
    }
    return counts;
  }

  private Layout with(
      Arrangement arrangement, int vee, List<Bank> banks, String leading, List<Integer> firing) {
    return new Layout(
        layout.name(),
        layout.title(),
        arrangement,
        vee,
        banks,
        leading,
        firing,
        layout.mains(),
        layout.thrustMain(),
        layout.mainCaps(),
        layout.rodJournals(),
        layout.camBearings(),
        layout.lifters(),
        layout.rockers());
  }

  private Layout with(
      Map<Count, Integer> counts, boolean caps, LifterType lifters, RockerMount rockers) {
    return new Layout(
        layout.name(),
        layout.title(),
        layout.arrangement(),
        layout.vee(),
        layout.banks(),
        layout.leadingBank(),
        layout.firingOrder(),
        counts.getOrDefault(Count.MAINS, 0),
        counts.getOrDefault(Count.THRUST_MAIN, 0),
        caps,
        counts.getOrDefault(Count.ROD_JOURNALS, 0),
        counts.getOrDefault(Count.CAM_BEARINGS, 0),
        lifters,
        rockers);
  }
}
