package wherefrom.job.wedge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.wedge.BurstAnswer.BadCheck;
import wherefrom.job.wedge.BurstAnswer.Foreign;
import wherefrom.job.wedge.BurstAnswer.Scan;
import wherefrom.job.wedge.BurstAnswer.Typing;
import wherefrom.parts.CheckDigits;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

class BurstDecoderTest {
  private static final TagCode TAG = new TagCode(TagType.PART, 4_711_023, 17, 1);
  private static final TagCode OTHER = new TagCode(TagType.PLACE_CARD, 4_711_023, 23, 2);
  private static final int WEDGE = 8;
  private static final int PERSON = 170;

  private final Keyboard keyboard = new Keyboard();

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 8, 16, 40, 100})
  void aTagIsReadAtEveryPaceOfAScanner(long msPerKey) {
    keyboard.type(TAG.digits() + "\r", msPerKey);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits() + "\r"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r", "\n", "\t"})
  void enterAndTabEndAScan(String end) {
    keyboard.type(TAG.digits() + end, WEDGE);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits() + end));
  }

  @Test
  void aSecondEndingKeyIsSwallowedAndAPersonsEnterLaterIsNot() {
    keyboard.type(TAG.digits() + "\r\n", WEDGE);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits() + "\r"));
    keyboard.wait(400).type("\r", 0);
    assertThat(keyboard.answers).endsWith(new Typing("\r")).hasSize(2);
  }

  @Test
  void aScanWithoutEnterIsReadAfterAPause() {
    keyboard.type(TAG.digits(), WEDGE).pause(BurstDecoder.PAUSE_MS - 1);
    assertThat(keyboard.answers).isEmpty();
    keyboard.pause(1);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits()));
  }

  @Test
  void anEnterThatComesAfterThePauseBelongsToTheScan() {
    keyboard.type(TAG.digits(), WEDGE).pause(BurstDecoder.PAUSE_MS).type("\r", 300);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits()));
    keyboard.type("\r", 300);
    assertThat(keyboard.answers).endsWith(new Typing("\r")).hasSize(2);
  }

  @Test
  void aPauseInTheMiddleOfACodeGivesNothingYet() {
    keyboard.type(TAG.digits().substring(0, 9), WEDGE).pause(800);
    assertThat(keyboard.answers).isEmpty();
    keyboard.type(TAG.digits().substring(9) + "\r", WEDGE);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits() + "\r"));
  }

  @Test
  void twoScansWithoutEnterBetweenAreBothDelivered() {
    keyboard.type(TAG.digits() + OTHER.digits() + "\r", WEDGE);
    assertThat(keyboard.answers)
        .containsExactly(new Scan(TAG, TAG.digits()), new Scan(OTHER, OTHER.digits() + "\r"));
  }

  @Test
  void twoScansWithoutAnyEnterAreBothDeliveredAfterAPause() {
    keyboard.type(TAG.digits(), WEDGE).wait(90).type(OTHER.digits(), WEDGE).pause(200);
    assertThat(keyboard.answers)
        .containsExactly(new Scan(TAG, TAG.digits()), new Scan(OTHER, OTHER.digits()));
  }

  @Test
  void aFullScanAfterHalfAScanIsReadWhenAGapShowsWhereItBegins() {
    String half = TAG.digits().substring(0, 9);
    keyboard.type(half, WEDGE).wait(500).type(OTHER.digits() + "\r", WEDGE);
    assertThat(keyboard.answers)
        .containsExactly(new Typing(half), new Scan(OTHER, OTHER.digits() + "\r"));
  }

  @Test
  void aFullScanAfterHalfAScanWithNoGapIsAskedForAgain() {
    String digits = TAG.digits().substring(0, 9) + OTHER.digits();
    keyboard.type(digits + "\r", 1);
    assertThat(keyboard.answers).containsExactly(new BadCheck(digits, digits + "\r"));
  }

  @Test
  void aScanIntoANoteLeavesTheNoteToTheField() {
    keyboard.type("rod 4", PERSON).wait(400).type(TAG.digits() + "\r", WEDGE);
    assertThat(keyboard.answers)
        .containsExactly(new Typing("rod 4"), new Scan(TAG, TAG.digits() + "\r"));
  }

  @Test
  void aScanIntoANoteIsFoundWhileTheWindowIsBusyAndAllKeysArriveAtOnce() {
    keyboard.type("worn at the tip ", 1).type(TAG.digits() + "\r", 1);
    assertThat(keyboard.answers)
        .containsExactly(new Typing("worn at the tip "), new Scan(TAG, TAG.digits() + "\r"));
  }

  @Test
  void typingIsPassedOnWithItsEnter() {
    keyboard.type("0.0015\r", PERSON).type("pitted\t", PERSON).type("\r", PERSON);
    assertThat(keyboard.answers)
        .containsExactly(new Typing("0.0015\r"), new Typing("pitted\t"), new Typing("\r"));
  }

  @Test
  void typingThatStandsWithoutEnterIsPassedOnInTheEnd() {
    keyboard.type("0.0015", PERSON).pause(BurstDecoder.PAUSE_MS);
    assertThat(keyboard.answers).isEmpty();
    keyboard.pause(BurstDecoder.END_MS);
    assertThat(keyboard.answers).containsExactly(new Typing("0.0015"));
  }

  /** Six digits in a hurry, a look at the tag, then Enter: the Enter must reach the field. */
  @Test
  void enterAfterAPauseIsThePersonsHoweverFastTheDigitsCame() {
    keyboard.type("007633", 30).pause(BurstDecoder.END_MS);
    assertThat(keyboard.answers).hasSize(1);
    keyboard.type("\r", 400);
    assertThat(keyboard.answers.get(1)).isEqualTo(new Typing("\r"));
  }

  /** A scanner's late Enter after a tag still belongs to the tag. */
  @Test
  void enterAfterAPauseBelongsToTheTagBeforeIt() {
    keyboard.type(TAG.digits(), WEDGE).pause(BurstDecoder.PAUSE_MS).type("\r", 400);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, TAG.digits()));
  }

  @Test
  void manySizesTypedOneAfterTheOtherNeverMakeACode() {
    String digits = TAG.digits();
    for (int at = 0; at < TagCode.LENGTH; at += 4) {
      keyboard.type(digits.substring(at, at + 4), PERSON).wait(BurstDecoder.FORGET_MS + 1);
    }
    keyboard.type("\r", 0);
    assertThat(keyboard.answers).allMatch(Typing.class::isInstance);
    assertThat(keyboard.answered()).isEqualTo(digits + "\r");
  }

  @Test
  void aDamagedDigitIsABadCheck() {
    String wrong = "2" + TAG.digits().substring(1);
    keyboard.type(wrong + "\r", WEDGE);
    assertThat(keyboard.answers).containsExactly(new BadCheck(wrong, wrong + "\r"));
  }

  @Test
  void aDamagedScanIntoANoteLeavesTheNoteToTheField() {
    String wrong = "2" + TAG.digits().substring(1);
    keyboard.type("rod ", PERSON).type(wrong + "\r", WEDGE);
    assertThat(keyboard.answers)
        .containsExactly(new Typing("rod "), new BadCheck(wrong, wrong + "\r"));
  }

  @Test
  void aTagAndADamagedTagInOneBurstAreBothAnswered() {
    String wrong = "3" + OTHER.digits().substring(1);
    keyboard.type(wrong + TAG.digits() + "\r", WEDGE);
    assertThat(keyboard.answers)
        .containsExactly(new BadCheck(wrong, wrong), new Scan(TAG, TAG.digits() + "\r"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"https://example.org/x", "4006381333931", "ABC-123"})
  void aForeignCodeIsForeign(String text) {
    keyboard.type(text + "\r", WEDGE);
    assertThat(keyboard.answers).containsExactly(new Foreign(text, text + "\r"));
  }

  @Test
  void sixteenDigitsThatAgreeButNameNoTagAreForeign() {
    String noTag = "90000000000001";
    String digits = noTag + CheckDigits.of(noTag);
    keyboard.type(digits + "\r", WEDGE);
    assertThat(keyboard.answers).containsExactly(new Foreign(digits, digits + "\r"));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void theAimIdentifierIsStripped(int modifier) {
    String text = "]Q" + modifier + TAG.digits() + "\r";
    keyboard.type(text, WEDGE);
    assertThat(keyboard.answers).containsExactly(new Scan(TAG, text));
  }

  @Test
  void prefixIdentifierAndSuffixAreStripped() {
    Keyboard setUp = new Keyboard(new ScannerSetup("99s", "#", ""));
    String one = "99S]Q1" + TAG.digits() + "#";
    String two = "]Q199S" + OTHER.digits() + "#\r";
    setUp.type(one + two, WEDGE);
    assertThat(setUp.answers).containsExactly(new Scan(TAG, one), new Scan(OTHER, two));
  }

  @Test
  void anIdentifierBeforeADamagedTagBelongsToIt() {
    String wrong = "2" + TAG.digits().substring(1);
    keyboard.type("]Q1" + wrong + "\r", WEDGE);
    assertThat(keyboard.answers).containsExactly(new BadCheck(wrong, "]Q1" + wrong + "\r"));
  }
}
