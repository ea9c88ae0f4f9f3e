package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.job.OpenJob;
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
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk, "Type a code", question, 6, typed -> settle(desk, typed, taker)));
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
    Optional<CodeVerdict.AlsoFits> question = find(desk, code);
    if (question.isEmpty()) {
      taker.accept(code);
      return;
    }
    List<Choice<String>> choices = new ArrayList<>();
    question
        .get()
        .here()
        .forEach((digits, words) -> choices.add(new Choice<>(digits, "Yes, this engine's", words)));
    choices.add(new Choice<>("", "No, or not sure", "then scan the tag"));
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk, question.get().sentence(), choices, digits -> take(desk, digits, taker)));
  }

  private static void take(Desk desk, String digits, Consumer<String> taker) {
    if (digits.isEmpty()) {
      desk.say("Nothing was recorded. Scan the tag.");
    } else {
      taker.accept(digits);
    }
    desk.navigator().changed();
  }

  private static Optional<CodeVerdict.AlsoFits> find(Desk desk, String code) {
    if (desk.job().isEmpty()) {
      return Optional.empty();
    }
    OpenJob job = desk.getJob();
    return new TagBook(job.state(), desk.shelf()).find(code) instanceof Found.Refused refused
            && refused.verdict() instanceof CodeVerdict.AlsoFits question
        ? Optional.of(question)
        : Optional.empty();
  }
}
