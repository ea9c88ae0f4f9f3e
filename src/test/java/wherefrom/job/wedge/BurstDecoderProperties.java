package wherefrom.job.wedge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.wedge.BurstAnswer.Scan;
import wherefrom.job.wedge.BurstAnswer.Typing;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

class BurstDecoderProperties {
  private static final int ROUNDS = 1000;
  private final SplittableRandom random = new SplittableRandom(20260101);

  private TagCode tag() {
    return new TagCode(
        TagType.values()[random.nextInt(TagType.values().length)],
        random.nextInt(TagCode.MOST_ENGINE + 1),
        1 + random.nextInt(TagCode.MOST_ITEM),
        1 + random.nextInt(TagCode.MOST_ISSUE));
  }

  @ParameterizedTest
  @EnumSource
  void everyTagIsReadOnEveryLayout(XkbRows layout) {
    for (int round = 0; round < ROUNDS; round++) {
      TagCode tag = tag();
      String text = layout.type(tag.digits());
      boolean capsLock = random.nextInt(4) == 0;
      text = capsLock ? text.toUpperCase(Locale.ROOT) : text;
      Keyboard keyboard = new Keyboard().type(text + "\r", random.nextInt(101));
      assertThat(keyboard.answers).containsExactly(new Scan(tag, text + "\r"));
    }
  }

  @ParameterizedTest
  @EnumSource(
      mode = EnumSource.Mode.EXCLUDE,
      names = {"FR_BEPO", "PERSIAN"})
  void theAimIdentifierIsStrippedOnEveryLayoutThatKeepsItsLetter(XkbRows layout) {
    for (int round = 0; round < ROUNDS; round++) {
      TagCode tag = tag();
      String text = layout.identifier(random.nextInt(4)) + layout.type(tag.digits()) + "\r";
      Keyboard keyboard = new Keyboard().type(text, random.nextInt(41));
      assertThat(keyboard.answers).containsExactly(new Scan(tag, text));
    }
  }

  @ParameterizedTest
  @EnumSource
  void oneWrongDigitIsNeverAScan(XkbRows layout) {
    for (int round = 0; round < ROUNDS; round++) {
      StringBuilder digits = new StringBuilder(tag().digits());
      int at = random.nextInt(TagCode.LENGTH);
      digits.setCharAt(at, (char) ('0' + (digits.charAt(at) - '0' + 1 + random.nextInt(9)) % 10));
      String text = layout.type(digits.toString()) + "\r";
      Keyboard keyboard = new Keyboard().type(text, random.nextInt(41));
      assertThat(keyboard.answers).noneMatch(Scan.class::isInstance);
    }
  }

  /** MOD 97-10 catches 96 of 97 of the rest; here nothing at all may pass: the length is wrong. */
  @ParameterizedTest
  @EnumSource
  void aLostOrDoubledCharacterIsNeverAScan(XkbRows layout) {
    for (int round = 0; round < ROUNDS; round++) {
      StringBuilder digits = new StringBuilder(tag().digits());
      int at = random.nextInt(TagCode.LENGTH);
      if (random.nextBoolean()) {
        digits.deleteCharAt(at);
      } else {
        digits.insert(at, digits.charAt(at));
      }
      String text = layout.type(digits.toString()) + "\r";
      Keyboard keyboard = new Keyboard().type(text, random.nextInt(41));
      assertThat(keyboard.answers)
          .as(digits.toString())
          .hasSize(1)
          .allMatch(BurstAnswer.BadCheck.class::isInstance);
    }
  }

  @ParameterizedTest
  @EnumSource
  void severalTagsInOneBurstAreAllDelivered(XkbRows layout) {
    for (int round = 0; round < ROUNDS / 10; round++) {
      TagCode[] tags =
          Stream.generate(this::tag).limit(2 + random.nextInt(3)).toArray(TagCode[]::new);
      StringBuilder text = new StringBuilder();
      Stream.of(tags).forEach(tag -> text.append(layout.type(tag.digits())));
      Keyboard keyboard = new Keyboard().type(text + "\r", random.nextInt(41));
      assertThat(keyboard.answers)
          .extracting(answer -> ((Scan) answer).code())
          .containsExactly(tags);
    }
  }

  /** Everything that can happen at a bench, in any order: no character vanishes or doubles. */
  @Test
  void whatIsTypedIsAnswered() {
    for (int round = 0; round < ROUNDS; round++) {
      Keyboard keyboard = new Keyboard();
      for (int step = 0; step < 12; step++) {
        act(keyboard);
      }
      // A letter first: an Enter alone might belong to the scan before.
      keyboard.type("x\r", BurstDecoder.FORGET_MS + 1);
      assertThat(keyboard.answered()).isEqualTo(keyboard.typed.toString());
    }
  }

  private void act(Keyboard keyboard) {
    XkbRows layout = XkbRows.values()[random.nextInt(XkbRows.values().length)];
    String code = layout.type(tag().digits());
    switch (random.nextInt(7)) {
      case 0 -> keyboard.type(code + "\r", random.nextInt(101));
      case 1 -> keyboard.type(code, random.nextInt(101)).pause(random.nextInt(1500));
      case 2 -> keyboard.type(code.substring(random.nextInt(code.length())), random.nextInt(41));
      case 3 -> keyboard.type("bore 0.125 é", random.nextInt(300));
      case 4 -> keyboard.type("x\r", random.nextInt(300));
      case 5 -> keyboard.pause(random.nextInt(3000));
      default -> keyboard.type(code.repeat(2) + "\r", random.nextInt(41));
    }
  }

  @Test
  void digitsTypedByAPersonAreNeverAScanNorLost() {
    for (int round = 0; round < ROUNDS; round++) {
      Keyboard keyboard = new Keyboard();
      int entries = 1 + random.nextInt(30);
      for (int entry = 0; entry < entries; entry++) {
        String size = String.format(Locale.ROOT, "0.%04d", random.nextInt(10_000));
        keyboard.type(size, 130 + random.nextInt(200));
        keyboard.type(random.nextBoolean() ? "\r" : "", 150).pause(random.nextInt(2500));
      }
      keyboard.pause(BurstDecoder.END_MS);
      assertThat(keyboard.answers).allMatch(Typing.class::isInstance);
      assertThat(keyboard.answered()).isEqualTo(keyboard.typed.toString());
    }
  }
}
