package wherefrom.job.tags;

import wherefrom.engine.Spot;
import wherefrom.job.PartRecord;
import wherefrom.parts.Action;
import wherefrom.rules.Verdict;

/** What a scanned or typed code stands for in a job. */
public sealed interface Found {

  /** In words, without a full stop where it stands for something. */
  String words();

  record APart(PartRecord part) implements Found {
    @Override
    public String words() {
      return part.part().words();
    }
  }

  record ASpot(Spot spot) implements Found {
    @Override
    public String words() {
      return "place card: " + spot.words();
    }
  }

  record AnAction(Action action) implements Found {
    @Override
    public String words() {
      return "action card: " + action + ", " + action.words();
    }
  }

  record ABasket(int number) implements Found {
    @Override
    public String words() {
      return "basket " + number;
    }
  }

  /** A code that stands for nothing here, with the reason. */
  record Refused(Verdict verdict) implements Found {
    @Override
    public String words() {
      return verdict.sentence();
    }
  }
}
