package wherefrom.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.job.entry.OffForWashing;
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
   * A whole basket is back, by count: only where as many pieces are counted as went.
   *
   * @return what came of it, in a sentence
   */
  public Answer backByCount(int number, int counted) {
    Optional<Basket> basket = findBasket(number);
    if (basket.isEmpty()) {
      return new Answer.Refused("Nothing is in basket " + number + ".");
    }
    int went = basket.get().pieces();
    if (counted != went) {
      return new Answer.Refused(
          went
              + " pieces went in basket "
              + number
              + " and "
              + counted
              + " were counted: count again, or scan each one; what is left then is missing.");
    }
    Handling handling = new Handling(job);
    return job.asOne(
        () -> {
          basket.get().parts().forEach(part -> handling.backFromWashing(part.part().item()));
          return new Answer.Back("All " + went + " pieces of basket " + number + " are back.");
        });
  }

  /** What became of a request. */
  public sealed interface Answer {
    /** What came of it, or why nothing did, for the person. */
    String sentence();

    /** Everything is back, and recorded. */
    record Back(String sentence) implements Answer {}

    /** Nothing was recorded. */
    record Refused(String sentence) implements Answer {}
  }
}
