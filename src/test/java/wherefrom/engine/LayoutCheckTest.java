package wherefrom.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutCheckTest {
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();

  /** A layout that can be changed field by field. */
  private static final class Draft {
    String name = V8.name();
    String title = V8.title();
    List<Bank> banks = V8.banks();
    String leading = V8.leadingBank();
    List<Integer> firing = V8.firingOrder();
    int mains = V8.mains();
    int thrust = V8.thrustMain();
    int pins = V8.rodJournals();
    int cam = V8.camBearings();
    int vee = V8.vee();

    Layout build() {
      return new Layout(
          name,
          title,
          V8.arrangement(),
          vee,
          banks,
          leading,
          firing,
          mains,
          thrust,
          true,
          pins,
          cam,
          V8.lifters(),
          V8.rockers());
    }

    static Draft with(UnaryOperator<Draft> change) {
      return change.apply(new Draft());
    }

    Draft left(List<Integer> cylinders, String valves) {
      banks = List.of(new Bank("left", cylinders, valves), V8.banks().get(1));
      return this;
    }
  }

  private static Arguments wrong(String field, String words, UnaryOperator<Draft> change) {
    return Arguments.of(field, words, Draft.with(change).build());
  }

  static List<Arguments> wrongLayouts() {
    List<Integer> odd = List.of(1, 3, 5, 7);
    return List.of(
        wrong("name", "small letters", d -> set(d, () -> d.name = "My V8")),
        wrong("title", "title", d -> set(d, () -> d.title = " ")),
        wrong("banks", "2 banks", d -> set(d, () -> d.banks = d.banks.subList(0, 1))),
        wrong("banks", "its own name", d -> set(d, () -> d.banks = twice(d.banks.get(0)))),
        wrong("banks", "holds no cylinder", d -> d.left(List.of(), "")),
        wrong(
            "cylinders", "cylinder 2 is there twice", d -> d.left(List.of(1, 3, 5, 2), "EIIEEIIE")),
        wrong("cylinders", "missing: [7]", d -> d.left(List.of(1, 3, 5, 9), "EIIEEIIE")),
        wrong("valves", "needs 8 letters", d -> d.left(odd, "EIIEEII")),
        wrong("valves", "one E and one I", d -> d.left(odd, "EEIIEIIE")),
        wrong("leadingBank", "no bank named", d -> set(d, () -> d.leading = "middle")),
        wrong(
            "firingOrder",
            "cylinder 3 never fires",
            d -> set(d, () -> d.firing = List.of(1, 5, 7, 2, 6, 8, 4))),
        wrong(
            "firingOrder",
            "cylinder 1 fires 2 times",
            d -> set(d, () -> d.firing = List.of(1, 5, 7, 2, 6, 8, 4, 3, 1))),
        wrong(
            "firingOrder",
            "no cylinder 9",
            d -> set(d, () -> d.firing = List.of(1, 5, 7, 2, 6, 8, 4, 3, 9))),
        wrong("vee", "181 degrees", d -> set(d, () -> d.vee = 181)),
        wrong("vee", "-1 degrees", d -> set(d, () -> d.vee = -1)),
        wrong("mains", "0 main bearings", d -> set(d, () -> d.mains = 0)),
        wrong("thrustMain", "main 6", d -> set(d, () -> d.thrust = 6)),
        wrong("rodJournals", "9 crank pins", d -> set(d, () -> d.pins = 9)),
        wrong("camBearings", "-1 cam bearings", d -> set(d, () -> d.cam = -1)));
  }

  private static Draft set(Draft draft, Runnable change) {
    change.run();
    return draft;
  }

  private static List<Bank> twice(Bank bank) {
    return List.of(bank, bank);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("wrongLayouts")
  void aWrongLayoutIsRefusedWithASentenceThatNamesTheField(
      String field, String words, Layout layout) {
    assertThat(LayoutCheck.faults(layout))
        .anySatisfy(
            fault -> {
              assertThat(fault.field()).isEqualTo(field);
              assertThat(fault.sentence()).startsWith(field + ":").contains(words);
            });
  }

  @Test
  void everyReadyLayoutIsSound() {
    assertThat(ReadyLayouts.all()).hasSize(6);
    assertThat(ReadyLayouts.all()).allSatisfy(l -> assertThat(LayoutCheck.faults(l)).isEmpty());
  }

  @Test
  void theAngleBetweenTheBanksIsTheUsualOneWhereNobodySaysIt() {
    assertThat(ReadyLayouts.all()).extracting(Layout::vee).containsExactly(0, 0, 90, 90, 90, 180);
    assertThat(Draft.with(d -> set(d, () -> d.vee = 0)).build().vee()).isEqualTo(90);
    assertThat(Layout.usualVee(Arrangement.V, 12, 6)).isEqualTo(60);
    assertThat(Layout.usualVee(Arrangement.V, 6, 6)).isEqualTo(60);
    assertThat(Layout.usualVee(Arrangement.V, 6, 3)).isEqualTo(90);
    assertThat(Layout.usualVee(Arrangement.OPPOSED, 6, 6)).isEqualTo(180);
    assertThat(Layout.usualVee(Arrangement.INLINE, 5, 5)).isZero();
  }

  @Test
  void valvesStandInTheOrderOfTheBank() {
    assertThat(V8.valvesInOrder(V8.banks().get(0)))
        .extracting(ValveSpot::key)
        .containsExactly("1EX", "1IN", "3IN", "3EX", "5EX", "5IN", "7IN", "7EX");
  }

  @Test
  void everySpotIsFoundByItsKeyAndBelongsToASection() {
    for (Layout layout : ReadyLayouts.all()) {
      for (Spot spot : Spots.all(layout)) {
        assertThat(Spots.find(spot.key())).contains(spot);
        assertThat(Section.all(layout)).contains(Section.of(layout, spot));
      }
    }
    assertThat(Spots.find("3XX")).isEmpty();
  }
}
