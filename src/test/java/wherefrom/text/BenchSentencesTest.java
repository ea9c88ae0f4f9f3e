package wherefrom.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.job.Caution;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.Opening;

/**
 * A sentence that is read at the bench has at most twelve words: a glance takes it in. Meant are
 * the texts of screens, cautions, rules, checks and hints; not the record, help and sources.
 */
class BenchSentencesTest {
  private static final int MOST_WORDS = 12;
  private static final Pattern END = Pattern.compile("(?<=[.?!])\\s+|\\\\n|: |; ");
  private static final Pattern LETTERS = Pattern.compile("[a-z]{2}");
  private static final Pattern WORD = Pattern.compile("\\w");

  /** What is read at a context, or a source that is cited word for word. */
  private static final List<String> NOT_AT_THE_BENCH =
      List.of(
          "job/record/",
          "job/Caution.java",
          "ui/settings/LicenseText.java",
          "inspection/Sources.java",
          "rules/consequence/Sources.java");

  @Test
  void noTextOfAScreenARuleOrACheckHasALongSentence() {
    List<ShownTexts.Shown> texts =
        ShownTexts.in("ui", "rules", "job", "inspection", "parts", "scan");
    assertThat(texts.stream().filter(ShownTexts.Shown::isWords).count()).isGreaterThan(1_000);
    assertThat(
            texts.stream()
                .filter(shown -> NOT_AT_THE_BENCH.stream().noneMatch(shown.file()::startsWith))
                .flatMap(
                    shown -> tooLong(shown.text()).map(sentence -> shown.file() + ": " + sentence)))
        .isEmpty();
  }

  @Test
  void everyCautionIsShort() {
    assertThat(
            Arrays.stream(Caution.values())
                .map(Caution::sentence)
                .flatMap(BenchSentencesTest::tooLong))
        .isEmpty();
  }

  @Test
  void whatDebrisIsAndWhatToOpenIsShort() {
    assertThat(
            Stream.concat(
                    Arrays.stream(DebrisLook.values()).map(DebrisLook::words),
                    Arrays.stream(Opening.values()).map(Opening::sentence))
                .flatMap(BenchSentencesTest::tooLong))
        .isEmpty();
  }

  @Test
  void aSentenceOfThirteenWordsIsTooLong() {
    assertThat(tooLong("One two three four five six seven eight nine ten eleven twelve."))
        .isEmpty();
    assertThat(tooLong("Go. One two three four five six seven eight nine ten eleven twelve 13."))
        .hasSize(1);
  }

  private static Stream<String> tooLong(String text) {
    return Arrays.stream(END.split(text))
        .filter(LETTERS.asPredicate())
        .filter(sentence -> words(sentence) > MOST_WORDS);
  }

  private static long words(String sentence) {
    return Arrays.stream(sentence.split("\\s+")).filter(word -> WORD.matcher(word).find()).count();
  }
}
