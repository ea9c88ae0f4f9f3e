package wherefrom.workings.torque;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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

  private static List<Integer> positions(List<Bolt> bolts, int columns) {
    return bolts.stream().map(bolt -> bolt.row() * columns + bolt.column() + 1).toList();
  }

  @Test
  void twoRowsOfFiveGoFromTheCentreOutwardCrossingOver() {
    // Positions 1 2 3 4 5 over 6 7 8 9 10; common practice, no source.
    BoltPattern pattern = BoltPattern.ofRectangle(2, 5);
    assertThat(pattern.positions()).containsExactly(3, 8, 2, 9, 4, 7, 1, 10, 5, 6);
    assertThat(pattern.order())
        .extracting(Bolt::number)
        .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    assertThat(pattern.source()).isEqualTo(Source.commonPractice());
    assertThat(positions(pattern.loosening(), 5)).containsExactly(6, 5, 10, 1, 7, 4, 9, 2, 8, 3);
  }

  @Test
  void everyPatternNamesEachBoltOnceAndNeverComesBackInward() {
    for (int rows = 1; rows <= BoltPattern.MOST_ROWS; rows++) {
      for (int columns = 1; columns <= BoltPattern.MOST_COLUMNS; columns++) {
        List<Bolt> order = BoltPattern.ofRectangle(rows, columns).order();
        assertThat(new HashSet<>(positions(order, columns))).hasSize(rows * columns);
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
  void anOwnOrderNamesPositionsOnceAndLeavesOutWhereThereIsNoBolt() {
    BoltPattern pattern = own(2, 4, 3).orElseThrow();
    assertThat(pattern.positions()).containsExactly(2, 4, 3);
    assertThat(pattern.order())
        .containsExactly(new Bolt(1, 0, 1), new Bolt(2, 1, 1), new Bolt(3, 1, 0));
    assertThat(pattern.findAt(0, 0)).isEmpty();
    assertThat(pattern.findAt(1, 1)).contains(new Bolt(2, 1, 1));
    assertThat(own()).isEmpty();
    assertThat(own(1, 2, 2)).isEmpty();
    assertThat(own(1, 5)).isEmpty();
    assertThat(own(0, 1)).isEmpty();
  }

  private static Optional<BoltPattern> own(Integer... positions) {
    return BoltPattern.findOwn(2, 2, List.of(positions), MANUAL);
  }

  private static TorqueCard tick(TorqueCard card, int bolt, String person) {
    TorqueAnswer answer = card.tick(bolt, person, false);
    assertThat(answer).isInstanceOf(TorqueAnswer.Ticked.class);
    return ((TorqueAnswer.Ticked) answer).card();
  }

  private static String refusal(TorqueCard card, int bolt, String person) {
    return ((TorqueAnswer.Refused) card.tick(bolt, person, false)).sentence();
  }

  @Test
  void goesStageByStageThenAsksForASecondPerson() {
    // TM 10-3930-669-20 App. E: 29.5 lb·ft, then 165° in stages; split here as 90° and 75°.
    BoltPattern pattern = BoltPattern.ofRectangle(2, 2);
    TorqueCard card = TorqueCard.of(spec(pattern, torque("29.5"), angle("90"), angle("75")));
    for (int stage = 1; stage <= 3; stage++) {
      for (int bolt = 1; bolt <= 4; bolt++) {
        NextStep.Tighten next = (NextStep.Tighten) card.next();
        assertThat(next.stageNumber()).isEqualTo(stage);
        assertThat(next.bolt().number()).isEqualTo(bolt);
        card = tick(card, bolt, "A. B.");
      }
    }
    assertThat(card.next().sentence()).contains("second person", "bolt 1");
    assertThat(refusal(card, 1, " a. b. ")).contains("another person");
    for (int bolt = 1; bolt <= 4; bolt++) {
      card = tick(card, bolt, "C.");
    }
    assertThat(card.next()).isEqualTo(new NextStep.Done());
    assertThat(refusal(card, 1, "C.")).contains("tightened and checked");
    assertThat(pattern.order()).allMatch(card::isChecked);
    assertThat(card.boltsDone(2)).isEqualTo(4);
    assertThat(card.boltsDone(4)).isEqualTo(4);
  }

  @Test
  void theNextStepIsSaidInASentence() {
    TorqueCard card = TorqueCard.of(spec(BoltPattern.ofRectangle(1, 1), torque("30"), angle("90")));
    assertThat(card.next().sentence()).isEqualTo("Stage 1: bolt 1 to 30 lb·ft.");
    assertThat(tick(card, 1, "A").next().sentence())
        .isEqualTo("Stage 2: turn bolt 1 on by 90 deg.");
  }

  @Test
  void aBoltOutOfTurnIsQuestionedAndCountsWithAMarkWhereItWasSoAllTheSame() {
    TorqueCard card =
        TorqueCard.of(spec(BoltPattern.ofRectangle(1, 3), torque("20"), torque("40")));
    TorqueAnswer.OutOfTurn asked = (TorqueAnswer.OutOfTurn) card.tick(3, "A", false);
    assertThat(asked.sentence()).contains("Bolt 3 is not the next one", "bolt 1");
    assertThat(asked.due().number()).isEqualTo(1);
    TorqueCard after = ((TorqueAnswer.Ticked) card.tick(3, "A", true)).card();
    assertThat(after.ticks()).containsExactly(new Tick(1, 3, "A", true));
    assertThat(refusal(after, 3, "A")).contains("this stage done", "bolt 1");
    after = tick(tick(after, 1, "A"), 2, "A");
    assertThat(after.ticks()).last().isEqualTo(new Tick(1, 2, "A", false));
    assertThat(after.next().sentence()).isEqualTo("Stage 2: bolt 1 to 40 lb·ft.");
  }

  private static Stage stage(String typed) {
    return ((StageReading.Understood) StageReading.of(typed)).stage();
  }

  @Test
  void boltsAreLoosenedBetweenTwoTorquesInTheReverseOrder() {
    Stage quarter = stage("loosen 90 deg");
    TorqueCard card =
        TorqueCard.of(spec(BoltPattern.ofRectangle(1, 3), torque("40"), quarter, torque("25")));
    for (int bolt = 1; bolt <= 3; bolt++) {
      card = tick(card, bolt, "A");
    }
    for (int bolt = 3; bolt >= 1; bolt--) {
      assertThat(card.next().sentence())
          .isEqualTo("Stage 2: loosen bolt " + bolt + " by 90 deg, no torque wrench.");
      card = tick(card, bolt, "A");
    }
    assertThat(card.next().sentence()).isEqualTo("Stage 3: bolt 1 to 25 lb·ft.");
    assertThat(stage("loosen").words()).isEqualTo("loosen fully, no torque wrench");
    assertThat(stage("-180 deg")).isEqualTo(stage("Loosen 180 deg"));
    assertThat(StageReading.of("loosen 20 lb·ft")).isInstanceOf(StageReading.NotUnderstood.class);
  }

  @Test
  void noBoltIsLeftLoose() {
    BoltPattern pattern = BoltPattern.ofRectangle(1, 2);
    Stage loosen = stage("loosen");
    assertThat(spec(pattern, torque("40"), loosen).findFault().orElseThrow()).contains("tight");
    assertThat(spec(pattern, torque("40"), loosen, loosen, torque("40")).findFault()).isPresent();
    assertThat(spec(pattern, torque("40"), loosen, angle("90")).findFault()).isPresent();
    assertThat(spec(pattern, loosen, torque("40")).findFault()).isPresent();
    assertThat(spec(pattern, torque("40"), loosen, torque("20"), angle("90")).findFault())
        .isEmpty();
  }

  @Test
  void aTickNeedsANameAndABolt() {
    TorqueCard card =
        TorqueCard.of(spec(BoltPattern.ofRectangle(1, 3), torque("20"), torque("40")));
    assertThat(refusal(card, 1, " ")).contains("needs a name");
    assertThat(refusal(card, 4, "A")).contains("no bolt 4", "1 to 3");
    TorqueCard after = tick(card, 1, "A");
    assertThat(after.boltsDone(1)).isEqualTo(1);
    assertThat(after.boltsDone(2)).isZero();
  }

  @Test
  void aFaultySpecificationIsNamed() {
    BoltPattern pattern = BoltPattern.ofRectangle(1, 2);
    assertThat(spec(pattern).findFault().orElseThrow()).contains("Start with a torque");
    assertThat(spec(pattern, angle("90")).findFault().orElseThrow()).contains("Start");
    assertThat(spec(pattern, torque("40"), torque("30")).findFault().orElseThrow())
        .contains("30 lb·ft");
    assertThat(spec(pattern, torque("30"), angle("90"), torque("60")).findFault()).isPresent();
    assertThat(spec(pattern, torque("30"), angle("0")).findFault()).isPresent();
    assertThat(spec(pattern, new Stage.ToTorque(Amount.of("30", Unit.NEWTON))).findFault())
        .isPresent();
    assertThat(
            new TorqueSpec("head bolts", pattern, " ", List.of(torque("30")), MANUAL).findFault())
        .isPresent();
    TorqueSpec unsourced =
        new TorqueSpec("head bolts", pattern, "dry", List.of(torque("30")), Source.published(" "));
    assertThat(unsourced.findFault().orElseThrow()).contains("where the figures come from");
    assertThat(spec(pattern, torque("30"), torque("45"), angle("90")).findFault()).isEmpty();
    assertThat(spec(pattern, torque("30"), torque("30")).findFault()).isEmpty();
    TorqueSpec faulty = spec(pattern);
    assertThatThrownBy(() -> TorqueCard.of(faulty)).isInstanceOf(IllegalArgumentException.class);
  }
}
