package wherefrom.job.wedge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.wedge.BurstAnswer.Foreign;
import wherefrom.job.wedge.BurstAnswer.Scan;
import wherefrom.job.wedge.BurstAnswer.Taught;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

class SetUpCardTest {
  private static final String CARD = "0123456789";

  /** Its digits hold the card's: 4 0123456 7890. */
  private static final TagCode TAG = new TagCode(TagType.BASKET, 123_456, 7890, 1);

  private final Keyboard keyboard = new Keyboard();

  @ParameterizedTest
  @EnumSource
  void theCardTeachesEveryLayout(XkbRows layout) {
    keyboard.decoder.expectSetUpCard(true);
    String text = layout.type(CARD);
    keyboard.type(text + "\r", 20);
    assertThat(keyboard.answers)
        .containsExactly(new Taught(new ScannerSetup("", "", text), text + "\r"));
  }

  @Test
  void theCardTeachesAPrefixAndASuffixToo() {
    keyboard.decoder.expectSetUpCard(true);
    String text = "id:$A&" + XkbRows.FR.type(CARD) + "##";
    keyboard.type(text + "\r", 5);
    assertThat(keyboard.answers)
        .containsExactly(
            new Taught(new ScannerSetup("id:", "##", XkbRows.FR.type(CARD)), text + "\r"));
  }

  @Test
  void anUnknownLayoutIsTaughtAndThenRead() {
    Random random = new Random(42);
    List<Integer> characters = IntStream.rangeClosed('а', 'я').boxed().collect(Collectors.toList());
    for (int round = 0; round < 500; round++) {
      Collections.shuffle(characters, random);
      String row =
          characters.subList(0, 10).stream().map(Character::toString).collect(Collectors.joining());
      Keyboard taught = new Keyboard();
      taught.decoder.expectSetUpCard(true);
      String identifier = "?Ђ" + row.charAt(1);
      taught.type((random.nextBoolean() ? identifier : "") + row + "\r", 30);
      assertThat(taught.answers).hasSize(1);
      ScannerSetup setup = ((Taught) taught.answers.get(0)).setup();
      assertThat(setup).isEqualTo(new ScannerSetup("", "", row));
      taught.decoder.use(setup);
      String typed =
          TAG.digits()
              .chars()
              .mapToObj(digit -> row.substring(digit - '0', digit - '0' + 1))
              .collect(Collectors.joining());
      taught.type(typed + "\r", 30);
      assertThat(taught.answers).endsWith(new Scan(TAG, typed + "\r"));
    }
  }

  @Test
  void theCardOfAScannerWithoutEnterIsReadAfterAPause() {
    keyboard.decoder.expectSetUpCard(true);
    keyboard.type(CARD, 5).pause(BurstDecoder.PAUSE_MS);
    assertThat(keyboard.answers).containsExactly(new Taught(new ScannerSetup("", "", CARD), CARD));
  }

  @Test
  void aForeignCodeOfTenCharactersTeachesNothingUnasked() {
    keyboard.type("ABCDEFGHIJ\r", 5);
    assertThat(keyboard.answers).containsExactly(new Foreign("ABCDEFGHIJ", "ABCDEFGHIJ\r"));
  }

  @Test
  void theCardOfAKnownLayoutTeachesEvenUnasked() {
    keyboard.type(XkbRows.CZ.type(CARD) + "\r", 5);
    assertThat(keyboard.answers).hasOnlyElementsOfType(Taught.class).hasSize(1);
  }

  @Test
  void aTagScannedWhileTheCardIsExpectedIsStillATag() {
    keyboard.decoder.expectSetUpCard(true);
    keyboard.type(TAG.digits() + "\r", 5).type("qwertyuiop\r", 5);
    assertThat(keyboard.answers.get(0)).isEqualTo(new Scan(TAG, TAG.digits() + "\r"));
    assertThat(keyboard.answers.get(1)).isInstanceOf(Taught.class);
  }

  @Test
  void aCardOnWhichTwoDigitsArriveAlikeTeachesNothing() {
    keyboard.decoder.expectSetUpCard(true);
    keyboard.type("abcdefghii\r", 5);
    assertThat(keyboard.answers).containsExactly(new Foreign("abcdefghii", "abcdefghii\r"));
  }
}
