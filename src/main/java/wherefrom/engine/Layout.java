package wherefrom.engine;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * An engine's arrangement, as data. It may be wrong as typed in; {@link LayoutCheck} says so, and
 * no job starts with a wrong one.
 *
 * @param name short name for files and the command line: small letters, digits and hyphens
 * @param title what a person reads in a list
 * @param arrangement how the banks stand
 * @param vee the angle between the banks in degrees, 0 to 180; 0 for one bank. Where two banks are
 *     given 0, nobody has said it, and {@link #usualVee} is taken
 * @param banks one for an inline engine, two otherwise; the left one first, as seen from the
 *     flywheel end
 * @param leadingBank the bank that sits slightly ahead on the crank; its name
 * @param firingOrder every cylinder number once
 * @param mains main bearings, counted from the front
 * @param thrustMain the main bearing that takes the crank's end thrust
 * @param mainCaps false for a split case, whose halves hold the main shells without caps
 * @param rodJournals crank pins; fewer than the cylinders where two rods share one, split by an
 *     angle or not
 * @param camBearings camshaft bearings, counted from the front
 * @param lifters flat or roller
 * @param rockers on pivots of their own or on a shaft
 */
public record Layout(
    String name,
    String title,
    Arrangement arrangement,
    int vee,
    List<Bank> banks,
    String leadingBank,
    List<Integer> firingOrder,
    int mains,
    int thrustMain,
    boolean mainCaps,
    int rodJournals,
    int camBearings,
    LifterType lifters,
    RockerMount rockers) {
  private static final int SIX = 6;

  public Layout {
    banks = List.copyOf(banks);
    firingOrder = List.copyOf(firingOrder);
    vee = vee == 0 ? usualVee(arrangement, cylinders(banks).size(), rodJournals) : vee;
  }

  /** The same with other lifters. */
  public Layout with(LifterType other) {
    return copy(name, title, other);
  }

  /**
   * The angle in degrees that the banks of most such engines stand at: 60 for a V of twelve, and of
   * six with a crank pin for each rod; 90 for any other (from memory). With three pins a V of six
   * at 60 degrees cannot fire evenly; at 90 it does where each pin is split by 30 degrees.
   */
  public static int usualVee(Arrangement arrangement, int cylinders, int rodJournals) {
    boolean six = cylinders == SIX && rodJournals == SIX;
    return switch (arrangement) {
      case INLINE -> 0;
      case OPPOSED -> 180;
      case V -> six || cylinders == 2 * SIX ? 60 : 90;
    };
  }

  /** Every cylinder number, in counting order. */
  public List<Integer> cylinders() {
    return cylinders(banks);
  }

  private static List<Integer> cylinders(List<Bank> banks) {
    return banks.stream().flatMap(bank -> bank.cylinders().stream()).sorted().toList();
  }

  /** The bank that holds a cylinder; empty when there is no such cylinder. */
  public Optional<Bank> findBank(int cylinder) {
    return banks.stream().filter(bank -> bank.cylinders().contains(cylinder)).findFirst();
  }

  /** The valves of a bank in the order they stand, front to rear. */
  public List<ValveSpot> valvesInOrder(Bank bank) {
    return IntStream.range(0, bank.valves().length())
        .mapToObj(
            at ->
                new ValveSpot(
                    bank.cylinders().get(at / 2),
                    bank.valves().charAt(at) == ValveSide.INTAKE.letter()
                        ? ValveSide.INTAKE
                        : ValveSide.EXHAUST))
        .toList();
  }

  /** This layout under another name, to be edited. */
  public Layout copyAs(String newName, String newTitle) {
    return copy(newName, newTitle, lifters);
  }

  private Layout copy(String newName, String newTitle, LifterType other) {
    return new Layout(
        newName,
        newTitle,
        arrangement,
        vee,
        banks,
        leadingBank,
        firingOrder,
        mains,
        thrustMain,
        mainCaps,
        rodJournals,
        camBearings,
        other,
        rockers);
  }
}
