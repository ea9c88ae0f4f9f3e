package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;
import wherefrom.text.Words;

/** Codes that a person types: where six digits are another engine's too, the person is asked. */
public final class TypedCode {
  private TypedCode() {}

  /** Asks for the six digits on a tag and hands on what was found; then the window is drawn. */
  public static void ask(ScreenContext context, Consumer<Scanned> taker) {
    ask(context, "The six digits on the tag.", taker);
  }

  /** The same with a question of one's own. */
  public static void ask(ScreenContext context, String question, Consumer<Scanned> taker) {
    context.navigator().open(() -> new CodeScreen(context, question, taker, Optional.empty()));
  }

  /**
   * The same where a part may have no tag to read.
   *
   * @param noTag leads to what else tells the part
   */
  public static void ask(
      ScreenContext context, String question, Consumer<Scanned> taker, Runnable noTag) {
    context.navigator().open(() -> new CodeScreen(context, question, taker, Optional.of(noTag)));
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
  static void settle(ScreenContext context, Scanned typed, Consumer<Scanned> taker) {
    Scanned scanned = asExpected(context, typed);
    scanned
        .question()
        .ifPresentOrElse(
            asked -> ask(context, asked, taker),
            () -> context.perform(() -> taker.accept(scanned)));
  }

  /** What the screen asks for is taken as it was typed. */
  private static Scanned asExpected(ScreenContext context, Scanned typed) {
    return typed
        .question()
        .filter(asked -> asked.others().isEmpty() && asked.here().size() == 1)
        .flatMap(asked -> TagCode.find(asked.here().keySet().iterator().next()))
        .filter(code -> isExpected(context.navigator().current(), code))
        .map(code -> Scanned.of(context, code))
        .orElse(typed);
  }

  private static boolean isExpected(Screen screen, TagCode code) {
    return screen instanceof Scannable taking && taking.expects(code.type());
  }

  private static void ask(
      ScreenContext context, CodeVerdict.AlsoFits asked, Consumer<Scanned> taker) {
    boolean slip = !asked.near().isEmpty();
    context
        .navigator()
        .open(
            () ->
                new WhoseCodeScreen(
                    context,
                    context.touch().brief("Typed ", "") + asked.typed() + ": which is it?",
                    slip ? slips(asked) : engines(asked),
                    digits -> take(context, digits, taker),
                    taker));
  }

  private static List<Choice<String>> engines(CodeVerdict.AlsoFits asked) {
    List<Choice<String>> choices = new ArrayList<>();
    asked
        .here()
        .forEach((digits, words) -> choices.add(new Choice<>(digits, "This engine's", words)));
    String others = String.join(", ", asked.others());
    choices.add(new Choice<>("", "Another's, or not sure", "it also fits " + others));
    return choices;
  }

  /** What was typed, and what was meant where one digit is wrong or two are swapped. */
  private static List<Choice<String>> slips(CodeVerdict.AlsoFits asked) {
    List<Choice<String>> choices = new ArrayList<>();
    asked.here().forEach((digits, words) -> choices.add(choice(digits, words, "as typed")));
    asked.near().forEach((digits, words) -> choices.add(choice(digits, words, typed(digits))));
    choices.add(new Choice<>("", "Neither, or not sure", "then look at the tag again"));
    return choices;
  }

  private static Choice<String> choice(String digits, String words, String more) {
    return new Choice<>(digits, Words.capital(words), more);
  }

  private static String typed(String digits) {
    return TagCode.find(digits).map(code -> "one slip off: " + code.typed()).orElse("");
  }

  private static void take(ScreenContext context, String digits, Consumer<Scanned> taker) {
    if (digits.isEmpty()) {
      context.say("Nothing was recorded. Scan the tag.");
    } else {
      context.perform(() -> taker.accept(Scanned.of(context, digits)));
    }
  }
}
