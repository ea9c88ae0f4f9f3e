package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is read page by page parts where a reader would, and says where it goes on. */
class PortionsTest {
  @Test
  void partsBetweenSentencesWhereItCan() {
    assertThat(Portions.of("Wipe it and look. Never use a scraper. Lower shells wear first.", 45))
        .containsExactly("Wipe it and look. Never use a scraper.", "Lower shells wear first.");
  }

  @Test
  void partsAfterAClauseElseAndSaysThatItGoesOn() {
    assertThat(Portions.of("Usually off first: right exhaust manifold; right valve cover.", 48))
        .containsExactly("Usually off first: right exhaust manifold;", "right valve cover.");
  }

  @Test
  void aPortionGoesOnAfterAClauseOrDotsAndNotAfterASentence() {
    assertThat(Portions.goesOn("standard, if never ground before:")).isTrue();
    assertThat(Portions.goesOn("the bearings that …")).isTrue();
    assertThat(Portions.goesOn("Kept.")).isFalse();
    assertThat(Portions.goesOn("")).isFalse();
  }

  @Test
  void leavesNoSingleWordOfASentenceForTheLastPortion() {
    List<String> portions = Portions.of("No the bearings that tell are inspected and clean", 44);
    assertThat(portions).hasSize(2);
    assertThat(portions.get(0)).endsWith(" …");
    assertThat(portions.get(1).split(" ")).hasSizeGreaterThan(2);
  }

  @Test
  void losesNoWordAndPartsNone() {
    String words =
        "Service information for your exact engine outranks this tool, and so does a qualified"
            + " machinist: ask one where a reading is undecided. Follow local rules.";
    for (int most = 1; most < words.length() + 2; most++) {
      String joined = String.join(" ", Portions.of(words, most)).replace(" …", "");
      assertThat(joined).isEqualTo(words);
    }
  }

  @Test
  void shortWordsAreOnePortion() {
    assertThat(Portions.of("Kept.", 48)).containsExactly("Kept.");
    assertThat(Portions.of("", 48)).containsExactly("");
  }
}
