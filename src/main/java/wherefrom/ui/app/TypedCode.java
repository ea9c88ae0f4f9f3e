package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.rules.CodeVerdict;

/** Codes that a person types: where six digits are another engine's too, the person is asked. */
public final class TypedCode {
  private TypedCode() {}

  /** Asks for the six digits on a tag and hands on what was found; then the window is drawn. */
  public static void ask(ScreenContext context, Consumer<Scanned> taker) {
    ask(context, "The six digits on the tag.", taker);
  }

  /** The same with a question of one's own. */
  public static void ask(ScreenContext context, String question, Consumer<Scanned> taker) {
    context.navigator().open(() -> new CodeScreen(context, question, taker));
  }

  /** Goes on with the digits of a code that a person has begun to type. */
  static void begun(ScreenContext context, String digits, Consumer<Scanned> taker) {
    ask(context, taker);
    if (context.navigator().current() instanceof Typable pad) {
      digits.codePoints().mapToObj(Character::toString).forEach(pad::type);
    }
  }

  /**
   * Hands a code on and draws the window once it has been taken; where it may be another engine's,
   * only when the person said that it is not.
   */
  static void settle(ScreenContext context, Scanned scanned, Consumer<Scanned> taker) {
    scanned
        .question()
        .ifPresentOrElse(
            asked -> ask(context, asked, taker),
            () -> context.perform(() -> taker.accept(scanned)));
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
                new WhoseCodeScreen(
                    context,
                    asked.sentence(),
                    choices,
                    digits -> take(context, digits, taker),
                    taker));
  }

  private static void take(ScreenContext context, String digits, Consumer<Scanned> taker) {
    if (digits.isEmpty()) {
      context.say("Nothing was recorded. Scan the tag.");
    } else {
      context.perform(() -> taker.accept(Scanned.of(context, digits)));
    }
  }
}
