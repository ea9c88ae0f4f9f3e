package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.NewPart;
import wherefrom.parts.Part;
import wherefrom.text.UsualWords;

/**
 * Asks why and what of a new part in place of an old one. One press alone retires no part: where
 * the size or the sort of the new one is asked, a reason that is known already is not; else it is
 * asked, and the known one comes first.
 */
public final class ReplaceAsking {
  private ReplaceAsking() {}

  /**
   * Asks; Back leaves with the old part as it was.
   *
   * @param why what says already why a new part comes, if anything does
   * @param done is given the reason and what is known of the new part
   */
  public static void ask(
      ScreenContext context, Part old, Optional<String> why, BiConsumer<String, NewPart> done) {
    why.filter(known -> NewPartAsking.asks(context, old))
        .ifPresentOrElse(
            known -> about(context, old, known, done),
            () ->
                ReasonAsking.ask(
                    context,
                    "Why a new part?",
                    reasons(why),
                    reason -> about(context, old, reason, done)));
  }

  private static void about(
      ScreenContext context, Part old, String reason, BiConsumer<String, NewPart> done) {
    NewPartAsking.ask(context, old, fresh -> done.accept(reason, fresh));
  }

  /** What is known already comes first. */
  private static UsualWords reasons(Optional<String> first) {
    UsualWords usual = Handling.REPLACE_REASONS;
    List<String> words = Stream.concat(first.stream(), usual.usual().stream()).distinct().toList();
    return new UsualWords(words, usual.own());
  }
}
