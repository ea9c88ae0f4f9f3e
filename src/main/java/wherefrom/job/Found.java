package wherefrom.job;

import wherefrom.engine.Spot;
import wherefrom.parts.Action;
import wherefrom.rules.Verdict;

/** What a scanned or typed code stands for in a job. */
public sealed interface Found {
  record APart(PartRecord part) implements Found {}

  record ASpot(Spot spot) implements Found {}

  record AnAction(Action action) implements Found {}

  record ABasket(int number) implements Found {}

  /** A code that stands for nothing here, with the reason. */
  record Refused(Verdict verdict) implements Found {}
}
