package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.rules.CodeVerdict;

/** Codes that a person types: where six digits are another engine's too, the person is asked. */
public final class TypedCode {
  private TypedCode() {}

  /**
   * Asks for the six digits on a tag.
   *
   * @param taker is given them, or the tag's sixteen digits where the person had to confirm
   */
  public static void ask(Desk desk, String question, Consumer<String> taker) {
    look(desk, question, sure -> taker.accept(sure.text()));
  }

  /** The same; the taker is given what was found, too. */
  public static void look(Desk desk, String question, Consumer<Scanned> taker) {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk,
                    "Type a code",
                    question,
                    6,
                    typed -> settle(desk, lookUp(desk, typed, book -> book.find(typed)), taker)));
  }

  /** Goes on with the digits of a code that a person has begun to type. */
  static void begun(Desk desk, String digits, Consumer<String> taker) {
    ask(desk, "The six digits on the tag.", taker);
    if (desk.navigator().current() instanceof Typable pad) {
      digits.codePoints().mapToObj(Character::toString).forEach(pad::type);
    }
  }

  /**
   * Hands a code on; where it may be another engine's, only once the person said that it is not.
   */
  public static void settle(Desk desk, String code, Consumer<String> taker) {
    Scanned scanned = lookUp(desk, code, book -> book.find(code));
    settle(desk, scanned, sure -> taker.accept(sure.text()));
  }

  /** Looks a code up in the open job. */
  static Scanned lookUp(Desk desk, String text, Function<TagBook, Found> look) {
    return new Scanned(
        text, desk.job().map(job -> look.apply(new TagBook(job.state(), desk.shelf()))));
  }

  /** The same of a code that was looked up. */
  static void settle(Desk desk, Scanned scanned, Consumer<Scanned> taker) {
    scanned
        .question()
        .ifPresentOrElse(asked -> ask(desk, asked, taker), () -> taker.accept(scanned));
  }

  private static void ask(Desk desk, CodeVerdict.AlsoFits asked, Consumer<Scanned> taker) {
    List<Choice<String>> choices = new ArrayList<>();
    asked
        .here()
        .forEach((digits, words) -> choices.add(new Choice<>(digits, "Yes, this engine's", words)));
    choices.add(new Choice<>("", "No, or not sure", "then scan the tag"));
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk, asked.sentence(), choices, digits -> take(desk, digits, taker)));
  }

  private static void take(Desk desk, String digits, Consumer<Scanned> taker) {
    if (digits.isEmpty()) {
      desk.say("Nothing was recorded. Scan the tag.");
    } else {
      taker.accept(lookUp(desk, digits, book -> book.find(digits)));
    }
    desk.navigator().changed();
  }
}
