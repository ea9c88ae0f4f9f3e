package wherefrom.job.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.handling.Handling;
import wherefrom.parts.Whereabouts;

/** What is off for washing, basket by basket, and baskets checked in by count. */
public final class Washing {

  /** A basket that something is in. */
  public record Basket(int number, List<PartRecord> parts) {
    public Basket {
      parts = List.copyOf(parts);
    }

    /** How many pieces, those on one wire counted each. */
    public int pieces() {
      return parts.stream().mapToInt(part -> part.part().pieces()).sum();
    }

    /** The parts that lie in it with others of their kind: without tags they are not told apart. */
    public List<PartRecord> alike() {
      return parts.stream()
          .filter(one -> parts.stream().filter(other -> isLike(one, other)).count() > 1)
          .toList();
    }

    private static boolean isLike(PartRecord one, PartRecord other) {
      return one.part().kind() == other.part().kind();
    }
  }

  private final OpenJob job;

  public Washing(OpenJob job) {
    this.job = job;
  }

  /** The baskets that hold something, by number. */
  public List<Basket> baskets() {
    Map<Integer, Integer> last = new HashMap<>();
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof OffForWashing off) {
        last.put(off.item(), off.basket());
      }
    }
    Map<Integer, List<PartRecord>> baskets = new TreeMap<>();
    for (PartRecord part : job.state().parts()) {
      if (part.where() == Whereabouts.WASHING) {
        int number = last.getOrDefault(part.part().item(), 1);
        baskets.computeIfAbsent(number, key -> new ArrayList<>()).add(part);
      }
    }
    return baskets.entrySet().stream()
        .map(one -> new Basket(one.getKey(), one.getValue()))
        .toList();
  }

  public Optional<Basket> findBasket(int number) {
    return baskets().stream().filter(basket -> basket.number() == number).findFirst();
  }

  /**
   * A whole basket is back, by count: only where as many pieces are counted as went. A count proves
   * that all came back, never which is which: where parts of a kind lie together, it does so only
   * if their tags stayed on.
   *
   * @param tagsStayedOn empty where nobody has said yet
   */
  public Answer backByCount(int number, int counted, Optional<Boolean> tagsStayedOn) {
    return job.asOne(() -> backByCountOnce(number, counted, tagsStayedOn));
  }

  private Answer backByCountOnce(int number, int counted, Optional<Boolean> tagsStayedOn) {
    Optional<Basket> basket = findBasket(number);
    if (basket.isEmpty()) {
      return new Answer.Refused("Nothing is in basket " + number + ".");
    }
    int went = basket.get().pieces();
    if (counted != went) {
      return new Answer.Refused(
          went
              + " went into basket "
              + number
              + "; you counted "
              + counted
              + ". Count again, or scan each part back; the rest is lost.");
    }
    List<PartRecord> alike = basket.get().alike();
    if (alike.isEmpty() || tagsStayedOn.orElse(false)) {
      back(basket.get().parts());
      return new Answer.Back("All " + went + " pieces of basket " + number + " are back.");
    }
    if (tagsStayedOn.isEmpty()) {
      return new Answer.Asked(
          "Did the tags stay on in the wash? A count alone does not tell which "
              + alike.get(0).part().kind().word()
              + " is which.");
    }
    List<PartRecord> told = new ArrayList<>(basket.get().parts());
    told.removeAll(alike);
    back(told);
    return new Answer.Refused(
        "All "
            + went
            + " are there, but "
            + alike.size()
            + " cannot be told apart without tags. Measure to tell which is which.");
  }

  private void back(List<PartRecord> parts) {
    Handling handling = new Handling(job);
    job.asOne(
        () -> {
          parts.forEach(part -> handling.backFromWashing(part.part().item()));
          return parts.size();
        });
  }

  /** What became of a request. */
  public sealed interface Answer {

    /** What the function for its kind makes of it. */
    default <R> R match(
        Function<Back, R> back, Function<Asked, R> asked, Function<Refused, R> refused) {
      if (this instanceof Back one) {
        return back.apply(one);
      }
      if (this instanceof Asked one) {
        return asked.apply(one);
      }
      return refused.apply((Refused) this);
    }

    /** What came of it, or why nothing did, for the person. */
    String sentence();

    /** Everything is back, and recorded. */
    record Back(String sentence) implements Answer {}

    /** Nothing was recorded: it hangs on whether the tags stayed on. */
    record Asked(String sentence) implements Answer {}

    /** Some or all are not back; the sentence says why. */
    record Refused(String sentence) implements Answer {}
  }
}
