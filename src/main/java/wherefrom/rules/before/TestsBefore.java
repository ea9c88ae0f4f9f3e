package wherefrom.rules.before;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.inspection.Look;
import wherefrom.workings.ResultValue;

/**
 * Everything that was read before the engine came apart.
 *
 * @param cylinders one each, in the order of their numbers
 * @param running by the key of its plan
 * @param needle what the needle does, by the key of its test
 */
public record TestsBefore(
    Layout layout,
    List<Cylinder> cylinders,
    Map<String, Running> running,
    Map<String, Look> needle,
    Bounds bounds) {

  /**
   * The tests of one cylinder.
   *
   * @param limit how its dry reading stands against the person's own limit
   * @param share of the highest dry reading, in percent
   * @param rise with oil, in percent of the dry reading
   * @param leak in percent
   * @param odd whether it is the odd one out of the dry readings, to the low side
   * @param heard by the key of its test
   */
  public record Cylinder(
      int number,
      Optional<ResultValue> dry,
      Look limit,
      Optional<ResultValue> share,
      Optional<ResultValue> rise,
      Optional<ResultValue> leak,
      boolean odd,
      Map<String, Look> heard) {
    public Cylinder {
      heard = Map.copyOf(heard);
    }

    /** {@code Cylinder 3: 90 psi, 60 % of the highest.} */
    String words() {
      return "Cylinder "
          + number
          + ": "
          + dry.map(ResultValue::text).orElse("not read")
          + share.map(of -> ", " + whole(of) + " of the highest").orElse("")
          + rise.map(by -> ", " + whole(by) + " more with oil").orElse("")
          + ".";
    }
  }

  /**
   * A pressure of the running engine.
   *
   * @param words as read, with the speed
   * @param limit how it stands against the person's own limit
   */
  public record Running(String words, Look limit) {}

  /**
   * From which share on a reading counts.
   *
   * @param share least share of the highest
   * @param rise least rise with oil that counts as one
   * @param leak most that a cylinder may leak
   */
  public record Bounds(Bound share, Bound rise, Bound leak) {}

  public TestsBefore {
    cylinders = List.copyOf(cylinders);
    running = Map.copyOf(running);
    needle = Map.copyOf(needle);
  }

  Optional<Cylinder> find(int number) {
    return cylinders.stream().filter(one -> one.number() == number).findFirst();
  }

  static String whole(ResultValue percent) {
    return percent.amount().rounded(0).text();
  }
}
