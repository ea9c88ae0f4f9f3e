package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** Where large letters leave room for the bolts or for the words, a question is read at once. */
class TorqueQuestionTest {
  private static String shown(String shot, Glass glass) {
    return Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(glass, 200, Appearance.LIGHT);
          TorqueShots.all().stream()
              .filter(one -> one.name().equals(shot))
              .findFirst()
              .orElseThrow()
              .arrange()
              .accept(window);
          window.layOut();
          String words = window.words();
          window.shell.close();
          return words;
        });
  }

  @Test
  void theQuestionComesBeforeTheBoltsThatWereShown() {
    assertThat(shown("torque-card", Glass.SMALL)).contains("Show the bolts");
    assertThat(shown("torque-question", Glass.SMALL)).contains("OUT OF TURN?", "Bolt 5 is next");
    assertThat(shown("torque-question", Glass.UPRIGHT)).contains("OUT OF TURN?");
  }
}
