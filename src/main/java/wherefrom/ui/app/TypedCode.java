package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.job.tags.CodeLookup;
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
  public static void ask(ScreenContext context, String question, Consumer<String> taker) {
    look(context, question, sure -> taker.accept(sure.text()));
  }

  /** The same; the taker is given what was found, too. */
  public static void look(ScreenContext context, String question, Consumer<Scanned> taker) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context,
                    "Type a code",
                    question,
                    6,
                    typed ->
                        settle(context, lookUp(context, typed, book -> book.find(typed)), taker)));
  }

  /** Goes on with the digits of a code that a person has begun to type. */
  static void begun(ScreenContext context, String digits, Consumer<String> taker) {
    ask(context, "The six digits on the tag.", taker);
    if (context.navigator().current() instanceof Typable pad) {
      digits.codePoints().mapToObj(Character::toString).forEach(pad::type);
    }
  }

  /**
   * Hands a code on; where it may be another engine's, only once the person said that it is not.
   */
  public static void settle(ScreenContext context, String code, Consumer<String> taker) {
    Scanned scanned = lookUp(context, code, book -> book.find(code));
    settle(context, scanned, sure -> taker.accept(sure.text()));
  }

  /** Looks a code up in the open job. */
  static Scanned lookUp(ScreenContext context, String text, Function<TagBook, CodeLookup> look) {
    return new Scanned(
        text, context.job().map(job -> look.apply(new TagBook(job.state(), context.shelf()))));
  }

  /** The same of a code that was looked up. */
  static void settle(ScreenContext context, Scanned scanned, Consumer<Scanned> taker) {
    scanned
        .question()
        .ifPresentOrElse(asked -> ask(context, asked, taker), () -> taker.accept(scanned));
  }

  private static void ask(
      ScreenContext context, CodeVerdict.AlsoFits asked, Consumer<Scanned> taker) {
    List<Choice<String>> choices = new ArrayList<>();
    asked
        .here()
        .forEach((digits, words) -> choices.add(new Choice<>(digits, "Yes, this engine's", words)));
    choices.add(new Choice<>("", "No, or not sure", "then scan the tag"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, asked.sentence(), choices, digits -> take(context, digits, taker)));
  }

  private static void take(ScreenContext context, String digits, Consumer<Scanned> taker) {
    if (digits.isEmpty()) {
      context.say("Nothing was recorded. Scan the tag.");
    } else {
      taker.accept(lookUp(context, digits, book -> book.find(digits)));
    }
    context.navigator().changed();
  }
}
