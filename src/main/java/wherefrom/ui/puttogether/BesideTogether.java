package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartOrder;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.bags.BesideScan;

/** Bags and big parts while the engine goes together: their scans, their turn, what is open. */
final class BesideTogether {
  private final ScreenContext context;

  BesideTogether(ScreenContext context) {
    this.context = context;
  }

  private BagBook book() {
    return BagBook.of(context.state());
  }

  private BigPartOrder order() {
    return new BigPartOrder(context.state(), book());
  }

  /**
   * Takes the tag of a bag or a big part: it is in. While a stop stands nothing scans through.
   *
   * @return whether it was one
   */
  boolean take(CodeLookup found, PutTogetherModel model) {
    boolean one = BesideScan.isOne(found) && model.stop().isEmpty();
    if (one) {
      BesideScan.in(context, found);
    }
    return one;
  }

  /** The big part that goes on now; empty where parts come first, or none is off. */
  Optional<BigPartRecord> next() {
    return order().findNextOn();
  }

  /**
   * Says which big part should have been on before the part that was just fitted, or is over it.
   */
  void tell(PutTogetherModel model) {
    model
        .right()
        .map(RightModel::place)
        .map(this::said)
        .filter(it -> !it.isEmpty())
        .ifPresent(context::say);
  }

  private String said(Place place) {
    List<BigPartRecord> first = order().firstOn(place);
    List<BigPartRecord> over = order().over(place);
    String under = first.isEmpty() ? "" : "Usually on first: " + names(first) + ".";
    String covered = over.isEmpty() ? "" : " Logged as on already: " + names(over) + ".";
    return (under + covered).strip();
  }

  private static String names(List<BigPartRecord> parts) {
    return parts.stream().map(BigPartRecord::words).collect(Collectors.joining(", "));
  }

  /** Bags that should be used up by now, in a sentence; empty where none is open. */
  Optional<String> openBags() {
    List<Bag> due = book().bagsDue();
    return due.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Words.count(due.size(), "bag")
                + " not used yet: "
                + due.get(0).words()
                + (due.size() > 1 ? " and more." : "."));
  }

  /** {@code 5 big parts, 3 bags}; empty where nothing is open. */
  String toFit() {
    int parts = book().bigPartsOff().size();
    int bags = book().openBags().size();
    return Stream.of(
            parts == 0 ? "" : Words.count(parts, "big part"),
            bags == 0 ? "" : Words.count(bags, "bag"))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
