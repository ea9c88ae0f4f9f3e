package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OldWordsTest {

  @ParameterizedTest
  @CsvSource({
    "take-back --before, undo --before",
    "cycles --json, swaps --json",
    "missing, to-fit",
    "excuse --reason x -, leave-empty --reason x -",
    "close mains, finish mains",
    "money out --out m.csv, money export --out m.csv",
    "money in m.csv, money import m.csv",
    "plan answer --look pass x, plan answer --answer pass x",
    "plan answer --look=pass x, plan answer --answer=pass x",
    "debris opened cam --look fail, debris opened cam --answer fail",
    "tray out t.png --show, tray out t.png --preview",
    "plan change cam --only-show, plan change cam --preview",
    "retag propose --by a=b, retag propose --with a=b",
    "retag accept --by=a=b, retag accept --with=a=b",
  })
  void aScriptOfBeforeGoesOnWorking(String before, String today) {
    assertThat(OldWords.today(words(before))).isEqualTo(words(today));
  }

  @ParameterizedTest
  @CsvSource({"note --text missing", "tool list", "plan list --show", "out 17 --show"})
  void aWordElsewhereStaysAsItIs(String call) {
    List<String> words = words(call);
    assertThat(OldWords.today(words)).isEqualTo(words);
  }

  @Test
  void everyWordOfTodayIsACommand() {
    for (String before : List.of("take-back", "cycles", "missing", "excuse", "close")) {
      assertThat(Commands.find(List.of(before))).isEmpty();
      assertThat(Commands.find(OldWords.today(List.of(before)))).isPresent();
    }
  }

  private static List<String> words(String call) {
    return List.of(call.split(" "));
  }
}
