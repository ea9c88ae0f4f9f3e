package wherefrom.job.tags;

import java.util.Optional;
import java.util.function.Function;
import wherefrom.engine.Spot;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.parts.Action;
import wherefrom.rules.Verdict;

/** What a scanned or typed code stands for in a job. */
public sealed interface CodeLookup {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<APart, R> part,
      Function<ASpot, R> spot,
      Function<AnAction, R> action,
      Function<ABasket, R> basket,
      Function<ABag, R> bag,
      Function<ABigPart, R> bigPart,
      Function<Refused, R> refused) {
    if (this instanceof APart one) {
      return part.apply(one);
    }
    if (this instanceof ASpot one) {
      return spot.apply(one);
    }
    if (this instanceof AnAction one) {
      return action.apply(one);
    }
    if (this instanceof ABasket one) {
      return basket.apply(one);
    }
    if (this instanceof ABag one) {
      return bag.apply(one);
    }
    if (this instanceof ABigPart one) {
      return bigPart.apply(one);
    }
    return refused.apply((Refused) this);
  }

  /** In words, without a full stop where it stands for something. */
  String words();

  record APart(PartRecord part) implements CodeLookup {
    @Override
    public String words() {
      return part.part().words();
    }
  }

  record ASpot(Spot spot) implements CodeLookup {
    @Override
    public String words() {
      return "place card: " + spot.words();
    }
  }

  record AnAction(Action action) implements CodeLookup {
    @Override
    public String words() {
      return "action card: " + action + ", " + action.words();
    }
  }

  record ABasket(int number) implements CodeLookup {
    @Override
    public String words() {
      return "basket " + number;
    }
  }

  /** A bag's tag, whether anything is in it yet or not. */
  record ABag(int number, Optional<Bag> bag) implements CodeLookup {
    @Override
    public String words() {
      return bag.map(Bag::words).orElse("bag " + number + ", empty");
    }
  }

  record ABigPart(BigPartRecord part) implements CodeLookup {
    @Override
    public String words() {
      return part.words();
    }
  }

  /** A code that stands for nothing here, with the reason. */
  record Refused(Verdict verdict) implements CodeLookup {
    @Override
    public String words() {
      return verdict.sentence();
    }
  }
}
