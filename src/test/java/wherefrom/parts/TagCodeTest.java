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
    String noIssue = "11234567017300";
    assertThat(TagCode.find(noIssue + CheckDigits.of(noIssue))).isEmpty();
  }

  @Test
  void numbersOutOfRangeAreRefused() {
    assertThatThrownBy(() -> new TagCode(TagType.PART, 10_000_000, 1, 1))
        .hasMessageContaining("engine");
    assertThatThrownBy(() -> new TagCode(TagType.PART, 1, 0, 1)).hasMessageContaining("item");
    assertThatThrownBy(() -> new TagCode(TagType.PART, 1, 1, 100)).hasMessageContaining("issue");
  }

  @Test
  void theFirstAndTheLastOfEachNumberAreTags() {
    assertThat(new TagCode(TagType.PART, 9_999_999, 9_999, 99).digits())
        .startsWith("19999999999999");
    TagCode first = new TagCode(TagType.PART, 0, 1, 1);
    assertThat(first.digits()).startsWith("10000000000101");
    assertThat(TagCode.find(first.digits())).contains(first);
    assertThatThrownBy(() -> new TagCode(TagType.PART, -1, 1, 1)).hasMessageContaining("engine");
    assertThatThrownBy(() -> new TagCode(TagType.PART, 1, 10_000, 1)).hasMessageContaining("item");
    assertThatThrownBy(() -> new TagCode(TagType.PART, 1, 1, 0)).hasMessageContaining("issue");
  }

  @Test
  void sixteenCharactersThatAreNotAllDigitsAreNoTag() {
    assertThat(TagCode.isSixteenDigits("1123456701730142")).isTrue();
    for (String text : new String[] {"x123456701730142", "112345670173014x", "1123456/01730142"}) {
      assertThat(TagCode.isSixteenDigits(text)).as(text).isFalse();
      assertThat(TagCode.find(text)).as(text).isEmpty();
    }
  }

  /** Two engines a multiple of 97 apart: six typed digits mean a part of either. */
  @Test
  void enginesAMultipleOf97ApartShareTheirTypedCodesAndNoOthersDo() {
    assertThat(TagCode.typedAlike(3_681_950, TagType.PART, 8_044_137, TagType.PART)).isTrue();
    assertThat(new TagCode(TagType.PART, 3_681_950, 173, 1).typed())
        .isEqualTo(new TagCode(TagType.PART, 8_044_137, 173, 1).typed());
    assertThat(TagCode.typedAlike(3_681_950, TagType.PART, 8_044_138, TagType.PART)).isFalse();
    assertThat(TagCode.typedAlike(3_681_950, TagType.PART, 3_681_950, TagType.PLACE_CARD))
        .isFalse();
  }

  @Test
  void actionCardsServeEveryJob() {
    for (Action action : Action.values()) {
      assertThat(action.code().engine()).isZero();
      assertThat(Action.find(action.code().item())).contains(action);
      assertThat(action.words()).isNotBlank();
    }
    assertThat(Action.UNDO.words()).isEqualTo("one step back");
  }
}
