package wherefrom.workings.torque;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Source;

class TorqueCardTest {
  private static final Source MANUAL = Source.published("TM 10-3930-669-20, App. E");

  private static Stage torque(String figure) {
    return new Stage.ToTorque(Amount.of(figure, Unit.POUND_FOOT));
  }

  private static Stage angle(String degrees) {
    return new Stage.ByAngle(Amount.of(degrees, Unit.DEGREE));
  }

  private static TorqueSpec spec(BoltPattern pattern, Stage... stages) {
    return new TorqueSpec("head bolts", pattern, "oiled", List.of(stages), MANUAL);
  }

  private static List<Integer> numbers(List<Bolt> bolts) {
    return bolts.stream().map(Bolt::number).toList();
  }

  @Test
  void twoRowsOfFiveGoFromTheCentreOutwardCrossingOver() {
    // 1 2 3 4 5 over 6 7 8 9 10; common practice, no source.
    BoltPattern pattern = BoltPattern.ofRectangle(2, 5);
    assertThat(numbers(pattern.order())).containsExactly(3, 8, 2, 9, 4, 7, 1, 10, 5, 6);
    assertThat(pattern.source()).isEqualTo(Source.commonPractice());
    assertThat(numbers(pattern.loosening())).containsExactly(6, 5, 10, 1, 7, 4, 9, 2, 8, 3);
  }

  @Test
  void everyPatternNamesEachBoltOnceAndNeverComesBackInward() {
    for (int rows = 1; rows <= 6; rows++) {
      for (int columns = 1; columns <= BoltPattern.MOST; columns++) {
        List<Bolt> order = BoltPattern.ofRectangle(rows, columns).order();
        assertThat(new HashSet<>(order)).hasSize(rows * columns);
        int last = -1;
        for (Bolt bolt : order) {
          int down = 2 * bolt.row() - rows + 1;
          int across = 2 * bolt.column() - columns + 1;
          int away = down * down + across * across;
          assertThat(away).isGreaterThanOrEqualTo(last);
          last = away;
        }
      }
    }
    assertThatThrownBy(() -> BoltPattern.ofRectangle(0, 4))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anOwnOrderMustNameEveryBoltOnce() {
    assertThat(numbers(own(2, 1, 3, 4))).containsExactly(2, 1, 3, 4);
    assertThat(BoltPattern.findOwn(2, 2, List.of(1, 2, 3), MANUAL)).isEmpty();
    assertThat(BoltPattern.findOwn(2, 2, List.of(1, 2, 3, 3), MANUAL)).isEmpty();
    assertThat(BoltPattern.findOwn(2, 2, List.of(1, 2, 3, 5), MANUAL)).isEmpty();
  }

  private static List<Bolt> own(Integer... numbers) {
    return BoltPattern.findOwn(2, 2, List.of(numbers), MANUAL).orElseThrow().order();
  }

  private static TorqueCard tick(TorqueCard card, int bolt, String person) {
    TorqueAnswer answer = card.tick(bolt, person);
    assertThat(answer).isInstanceOf(TorqueAnswer.Ticked.class);
    return ((TorqueAnswer.Ticked) answer).card();
  }

  private static String refusal(TorqueCard card, int bolt, String person) {
    return ((TorqueAnswer.Refused) card.tick(bolt, person)).sentence();
  }

  @Test
  void goesStageByStageThenAsksForASecondPerson() {
    // TM 10-3930-669-20 App. E: 29.5 lb·ft, then 165° in stages; split here as 90° and 75°.
    BoltPattern pattern = BoltPattern.ofRectangle(2, 2);
    TorqueCard card = TorqueCard.of(spec(pattern, torque("29.5"), angle("90"), angle("75")));
    List<Integer> order = numbers(pattern.order());
    for (int stage = 1; stage <= 3; stage++) {
      for (int bolt : order) {
        NextStep.Tighten next = (NextStep.Tighten) card.next();
        assertThat(next.stageNumber()).isEqualTo(stage);
        assertThat(next.bolt().number()).isEqualTo(bolt);
        card = tick(card, bolt, "A");
      }
    }
    assertThat(card.next().sentence()).contains("second person", "bolt " + order.get(0));
    assertThat(refusal(card, order.get(0), " A ")).contains("another person");
    for (int bolt : order) {
      card = tick(card, bolt, "B");
    }
    assertThat(card.next()).isEqualTo(new NextStep.Done());
    assertThat(refusal(card, 1, "B")).contains("tightened and checked");
    assertThat(pattern.order()).allMatch(card::isChecked);
  }

  @Test
  void theNextStepIsSaidInASentence() {
    TorqueCard card = TorqueCard.of(spec(BoltPattern.ofRectangle(1, 1), torque("30"), angle("90")));
    assertThat(card.next().sentence()).isEqualTo("Stage 1: bolt 1 to 30 lb·ft.");
    assertThat(tick(card, 1, "A").next().sentence())
        .isEqualTo("Stage 2: bolt 1 turn on by 90 deg.");
  }

  @Test
  void aBoltOutOfTurnIsRefusedAndATickCanBeTakenBack() {
    TorqueCard card =
        TorqueCard.of(spec(BoltPattern.ofRectangle(1, 3), torque("20"), torque("40")));
    assertThat(refusal(card, 1, "A")).contains("Bolt 1 is not the next one", "bolt 2");
    assertThat(refusal(card, 2, " ")).contains("needs a name");
    TorqueCard after = tick(card, 2, "A");
    assertThat(after.stagesDone(new Bolt(2, 0, 1))).isEqualTo(1);
    assertThat(after.stagesDone(new Bolt(1, 0, 0))).isZero();
    assertThat(after.takenBack()).isEqualTo(card);
    assertThat(card.takenBack()).isEqualTo(card);
  }

  @Test
  void aFaultySpecificationIsNamed() {
    BoltPattern pattern = BoltPattern.ofRectangle(1, 2);
    assertThat(spec(pattern).findFault().orElseThrow()).contains("Begin with a torque");
    assertThat(spec(pattern, angle("90")).findFault().orElseThrow()).contains("Begin");
    assertThat(spec(pattern, torque("40"), torque("30")).findFault().orElseThrow())
        .contains("30 lb·ft");
    assertThat(spec(pattern, torque("30"), angle("90"), torque("60")).findFault()).isPresent();
    assertThat(spec(pattern, torque("30"), angle("0")).findFault()).isPresent();
    assertThat(spec(pattern, new Stage.ToTorque(Amount.of("30", Unit.NEWTON))).findFault())
        .isPresent();
    assertThat(
            new TorqueSpec("head bolts", pattern, " ", List.of(torque("30")), MANUAL).findFault())
        .isPresent();
    assertThat(spec(pattern, torque("30"), torque("45"), angle("90")).findFault()).isEmpty();
    TorqueSpec faulty = spec(pattern);
    assertThatThrownBy(() -> TorqueCard.of(faulty)).isInstanceOf(IllegalArgumentException.class);
  }
}
