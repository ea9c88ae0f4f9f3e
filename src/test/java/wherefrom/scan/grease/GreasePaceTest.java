package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GreasePaceTest {
  private final GreasePace pace = new GreasePace();

  @Test
  void onlyFramesThatBothReadAreSetBesideEachOther() {
    show(4, true, 2, true);
    show(9, true, 3, true);
    show(500, true, 1, false);
    show(700, false, 1, true);
    assertThat(pace.bothTable("here").lines().skip(2))
        .containsExactly("| there | 2 | 6.50 | 2.50 | 2.60 | 2.50 | 3.00 |");
  }

  @Test
  void aReadersOwnMeansAreOfWhatItReadAndOfWhatItDidNot() {
    show(4, true, 2, true);
    show(9, true, 3, false);
    assertThat(pace.ownTable().lines().skip(2))
        .containsExactly(
            "| here | 9.00 | 2 | 6.50 | 0 | NaN |", "| there | 3.00 | 1 | 2.00 | 1 | 3.00 |");
  }

  private void show(double here, boolean readHere, double there, boolean readThere) {
    pace.add("here", here, readHere);
    pace.add("there", there, readThere);
  }
}
