package wherefrom.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.drawing.Sign;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

class ReadingBarTest {
  /** The ring of "another part is fitted" would say something else than the record. */
  @Test
  void aReadingHasTheMarksOfTheRecord() {
    assertThat(ReadingBar.sign(Ruling.REJECT)).isEqualTo(Sign.FAILED);
    assertThat(ReadingBar.sign(Ruling.UNDECIDED)).isEqualTo(Sign.OPEN);
    assertThat(ReadingBar.sign(Ruling.ACCEPT)).isEqualTo(Sign.FITTED);
  }
}
