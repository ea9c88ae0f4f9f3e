package wherefrom.engine;

import java.util.List;
import java.util.Optional;

/**
 * The layouts that come with the product. Numbers of bearings, valve orders and firing orders vary
 * between engines: they are common practice, no source, and the person copies and edits them.
 */
public final class ReadyLayouts {
  private static final Layout INLINE_4 =
      inline("inline-4", "Inline 4", List.of(1, 2, 3, 4), "EIIEEIIE", List.of(1, 3, 4, 2), 5, 3, 3);

  private static final Layout INLINE_6 =
      inline(
          "inline-6",
          "Inline 6",
          List.of(1, 2, 3, 4, 5, 6),
          "EIIEEIIEEIIE",
          List.of(1, 5, 3, 6, 2, 4),
          7,
          7,
          4);

  private static final Layout V6 =
      twoBanks(
          "v6-odd-even",
          "V6, odd and even banks",
          Arrangement.V,
          90,
          new Bank("left", List.of(1, 3, 5), "EIIEIE"),
          new Bank("right", List.of(2, 4, 6), "EIEIIE"),
          "left",
          List.of(1, 6, 5, 4, 3, 2),
          new Bearings(4, 2, true, 3, 4));

  private static final Layout V8_ODD_EVEN =
      twoBanks(
          "v8-odd-even",
          "V8, odd and even banks",
          Arrangement.V,
          90,
          new Bank("left", List.of(1, 3, 5, 7), "EIIEEIIE"),
          new Bank("right", List.of(2, 4, 6, 8), "EIIEEIIE"),
          "left",
          List.of(1, 8, 4, 3, 6, 5, 7, 2),
          new Bearings(5, 5, true, 4, 5));

  private static final Layout V8_SEQUENCE =
      twoBanks(
          "v8-sequence",
          "V8, banks numbered in sequence",
          Arrangement.V,
          90,
          new Bank("left", List.of(5, 6, 7, 8), "EIEIEIEI"),
          new Bank("right", List.of(1, 2, 3, 4), "IEIEIEIE"),
          "right",
          List.of(1, 5, 4, 2, 6, 3, 7, 8),
          new Bearings(5, 3, true, 4, 5));

  private static final Layout OPPOSED_4 =
      twoBanks(
          "opposed-4",
          "Opposed 4",
          Arrangement.OPPOSED,
          180,
          new Bank("left", List.of(3, 4), "EIIE"),
          new Bank("right", List.of(1, 2), "EIIE"),
          "right",
          List.of(1, 4, 3, 2),
          new Bearings(3, 1, false, 4, 3));

  private static final List<Layout> ALL =
      List.of(INLINE_4, INLINE_6, V6, V8_ODD_EVEN, V8_SEQUENCE, OPPOSED_4);

  private record Bearings(
      int mains, int thrustMain, boolean mainCaps, int rodJournals, int camBearings) {}

  private ReadyLayouts() {}

  /** The one that is drawn, and that a job begins with, until a person chooses. */
  public static Layout first() {
    return V8_ODD_EVEN;
  }

  public static List<Layout> all() {
    return ALL;
  }

  public static Optional<Layout> find(String name) {
    return ALL.stream().filter(layout -> layout.name().equals(name)).findFirst();
  }

  private static Layout inline(
      String name,
      String title,
      List<Integer> cylinders,
      String valves,
      List<Integer> firingOrder,
      int mains,
      int thrustMain,
      int camBearings) {
    return new Layout(
        name,
        title,
        Arrangement.INLINE,
        0,
        List.of(new Bank("single", cylinders, valves)),
        "single",
        firingOrder,
        mains,
        thrustMain,
        true,
        cylinders.size(),
        camBearings,
        LifterType.FLAT,
        RockerMount.INDIVIDUAL);
  }

  private static Layout twoBanks(
      String name,
      String title,
      Arrangement arrangement,
      int vee,
      Bank left,
      Bank right,
      String leading,
      List<Integer> firingOrder,
      Bearings bearings) {
    return new Layout(
        name,
        title,
        arrangement,
        vee,
        List.of(left, right),
        leading,
        firingOrder,
        bearings.mains(),
        bearings.thrustMain(),
        bearings.mainCaps(),
        bearings.rodJournals(),
        bearings.camBearings(),
        LifterType.FLAT,
        RockerMount.INDIVIDUAL);
  }
}
