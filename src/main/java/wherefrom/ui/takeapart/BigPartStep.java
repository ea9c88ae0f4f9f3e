package wherefrom.ui.takeapart;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartOrder;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.bags.BesideScan;
import wherefrom.ui.drawn.BigPartShape;
import wherefrom.ui.photos.PhotoTaking;

/**
 * The big part that comes off before the next tagged part. It is named, never forced: whoever
 * passes it goes on with the parts behind it, and it comes again another day.
 */
final class BigPartStep {

  /** What was passed, by the engine's number; kept while the window is open. */
  private static final class Passed {
    private final Map<Integer, Set<Integer>> numbers = new HashMap<>();
  }

  private final ScreenContext context;
  private final Set<Integer> passed;

  BigPartStep(ScreenContext context) {
    this.context = context;
    this.passed =
        context
            .kept()
            .keep(Passed.class, Passed::new)
            .numbers
            .computeIfAbsent(context.state().engine(), engine -> new HashSet<>());
  }

  /**
   * The big part to take off now.
   *
   * @param next the place of the tagged part that comes out next; empty when all are out
   */
  Optional<BigPartRecord> find(Optional<Place> next) {
    BagBook book = BagBook.of(context.state());
    return new BigPartOrder(context.state(), book).findLead(next, passed);
  }

  /** It is left for later. */
  void pass(BigPartRecord part) {
    passed.add(part.number());
    context.navigator().changed();
  }

  /** Its name, whole, to be read from afar: "left" alone is none. */
  static String name(BigPartRecord part) {
    return Words.capital(part.words());
  }

  /** It is off, as if its tag had been scanned. */
  void off(BigPartRecord part) {
    BesideScan.off(context, part.number());
  }

  void bag(BigPartRecord part) {
    BesideScan.bag(context, part);
  }

  void page(BigPartRecord part) {
    context.navigator().show(ScreenId.BIG_PART, part.number());
  }

  void photo(BigPartRecord part) {
    PhotoTaking.ask(context, Optional.of(Subject.ofBigPart(part.number())), "");
  }

  /** Its outline in a square. */
  Region shape(BigPartRecord part, double side) {
    BigPartShape drawn =
        new BigPartShape(
            context.scale(), context.state().layout(), part.part().name(), side, part.where());
    StackPane square = new StackPane(drawn);
    square.setMinSize(side, side);
    square.setPrefSize(side, side);
    square.setMaxSize(side, side);
    square.setMouseTransparent(true);
    return square;
  }

  /** What is still logged as on over a part that has come out, in a sentence; may be empty. */
  static String stillOn(BigPartOrder order, Place place) {
    List<BigPartRecord> over = order.over(place);
    return over.isEmpty()
        ? ""
        : "Still logged as on: "
            + over.stream().map(BigPartRecord::words).collect(Collectors.joining(", "))
            + ".";
  }
}
