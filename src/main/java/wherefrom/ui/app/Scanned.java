package wherefrom.ui.app;

import java.util.Optional;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.CodeVerdict;

/**
 * A code that was read or typed, looked up once on its way to the screen.
 *
 * @param text sixteen digits as a rule; anything else as it came
 * @param tag the tag of ours that it is, whole; empty where it is none
 * @param found what it stands for in the open job; empty where none is open
 */
public record Scanned(String text, Optional<TagCode> tag, Optional<CodeLookup> found) {

  /** Looks a text up, sixteen digits or the six that a person types. */
  public static Scanned of(ScreenContext context, String text) {
    return TagCode.find(text.replaceAll("\\s", ""))
        .map(code -> of(context, code))
        .orElseGet(
            () -> new Scanned(text, Optional.empty(), book(context).map(book -> book.find(text))));
  }

  /** Looks a tag of ours up. */
  public static Scanned of(ScreenContext context, TagCode code) {
    return new Scanned(
        code.digits(), Optional.of(code), book(context).map(book -> book.find(code)));
  }

  private static Optional<TagBook> book(ScreenContext context) {
    return context.job().map(job -> new TagBook(job.state(), context.shelf()));
  }

  /** What it stands for in the open job; only screens that work on a job may ask. */
  public CodeLookup getFound() {
    return found.orElseThrow(() -> new IllegalStateException("no job is open"));
  }

  /** Whether only its six digits are known, as a person types them. */
  public boolean isTyped() {
    return tag.isEmpty();
  }

  /** The action that it stands for; empty where it is no action card of ours. */
  Optional<Action> card() {
    return tag.filter(code -> code.type() == TagType.ACTION_CARD)
        .flatMap(code -> Action.find(code.item()));
  }

  /** What a person has to say first: the code may be another engine's. */
  Optional<CodeVerdict.AlsoFits> question() {
    return found.flatMap(
        what ->
            what instanceof CodeLookup.Refused refused
                    && refused.verdict() instanceof CodeVerdict.AlsoFits question
                ? Optional.of(question)
                : Optional.empty());
  }
}
