package wherefrom.ui.app;

import java.util.Optional;
import wherefrom.job.tags.CodeLookup;
import wherefrom.rules.CodeVerdict;

/**
 * A code that was read, looked up once on its way to the screen.
 *
 * @param text sixteen digits as a rule; anything else as it came
 * @param found what it stands for in the open job; empty where none is open
 */
public record Scanned(String text, Optional<CodeLookup> found) {

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
