package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TagCodeTest {

  @Test
  void sixteenDigitsCarryTypeEngineItemIssueAndCheck() {
    TagCode code = new TagCode(TagType.PART, 1_234_567, 173, 1);
    assertThat(code.digits()).hasSize(16).startsWith("11234567017301");
    assertThat(code.typed()).isEqualTo("0173 " + code.digits().substring(14));
  }

  @Test
  void everyCodeIsReadBackFromItsDigits() {
    Random random = new Random(3);
    for (int round = 0; round < 2_000; round++) {
      TagCode code =
          new TagCode(
              TagType.values()[random.nextInt(4)],
              random.nextInt(TagCode.MOST_ENGINE + 1),
              1 + random.nextInt(TagCode.MOST_ITEM),
              1 + random.nextInt(TagCode.MOST_ISSUE));
      assertThat(TagCode.find(code.digits())).contains(code);
    }
  }

  @Test
  void otherTextsAreNoTags() {
    assertThat(TagCode.find("")).isEmpty();
    assertThat(TagCode.find("1234")).isEmpty();
    assertThat(TagCode.find("1123456701730100")).isEmpty();
    String noType = "91234567017301";
    assertThat(TagCode.find(noType + CheckDigits.of(noType))).isEmpty();
    String noItem = "11234567000001";
    assertThat(TagCode.find(noItem + CheckDigits.of(noItem))).isEmpty();
  }

  @Test
  void numbersOutOfRangeAreRefused() {
    assertThatThrownBy(() -> new TagCode(TagType.PART, 10_000_000, 1, 1))
        .hasMessageContaining("engine");
    assertThatThrownBy(() -> new TagCode(TagType.PART, 1, 0, 1)).hasMessageContaining("item");
    assertThatThrownBy(() -> new TagCode(TagType.PART, 1, 1, 100)).hasMessageContaining("issue");
  }

  @Test
  void actionCardsServeEveryJob() {
    for (Action action : Action.values()) {
      assertThat(action.code().engine()).isZero();
      assertThat(Action.find(action.code().item())).contains(action);
    }
  }
}
