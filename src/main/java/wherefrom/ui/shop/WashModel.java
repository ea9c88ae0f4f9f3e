package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.Look;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.shop.Washing;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;
import wherefrom.ui.app.ReadTwice;

/** Washing: parts go into a numbered basket by scan, and come back by scan or by count. */
final class WashModel implements PartReceiver {

  /** A basket, with what is in it in words. */
  record Row(int number, String heading, String contents) {}

  private final OpenJob job;
  private final ReadTwice twice;
  private int basket = 1;

  /**
   * @param nanos a steady clock: a tag that is read twice in one go counts once
   */
  WashModel(OpenJob job, LongSupplier nanos) {
    this.job = job;
    this.twice = new ReadTwice(nanos);
    List<Washing.Basket> filled = new Washing(job).baskets();
    if (!filled.isEmpty()) {
      basket = filled.get(filled.size() - 1).number();
    }
  }

  int basket() {
    return basket;
  }

  /** Parts that are scanned from now on go into this basket. */
  void choose(int number) {
    if (number > 0) {
      basket = number;
    }
  }

  @Override
  public ScanOutcome basket(int number) {
    choose(number);
    return ScanOutcome.right("This is basket " + number + ".");
  }

  @Override
  public String prompt() {
    return "Scan each part that goes in, again when it is back.";
  }

  @Override
  public String briefPrompt() {
    return "Scan each part that goes in.";
  }

  @Override
  public ScanOutcome take(PartRecord part) {
    Handling handling = new Handling(job);
    int item = part.part().item();
    if (twice.isAgain(item)) {
      return ScanOutcome.right("The tag was read twice. It counts once.");
    }
    boolean back = part.where() == Whereabouts.WASHING;
    HandlingOutcome done =
        back ? handling.backFromWashing(item) : handling.offForWashing(item, basket);
    if (done instanceof HandlingOutcome.Refused refused) {
      return ScanOutcome.refused(refused.sentence());
    }
    twice.took(item);
    if (back) {
      return ScanOutcome.right(Words.capital(named(part)) + " is back: put its tag on again.");
    }
    boolean unlooked =
        job.state().inspection().isBegun()
            && job.state().bench().worst(item).look() == Look.NOT_LOOKED;
    return ScanOutcome.right(
        Words.capital(named(part))
            + " is in basket "
            + basket
            + (unlooked ? ". Inspect it, then take its tag off." : ". Take its tag off."));
  }

  private String named(PartRecord part) {
    return PlaceWords.named(job.state().layout(), part.part().home());
  }

  /** The whole basket is back, by count; empty while nobody said whether the tags stayed on. */
  Washing.Answer count(int pieces, Optional<Boolean> tagsStayedOn) {
    return new Washing(job).backByCount(basket, pieces, tagsStayedOn);
  }

  /** The basket that is filled now stands first. */
  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (Washing.Basket each : new Washing(job).baskets()) {
      int pieces = each.pieces();
      rows.add(
          new Row(
              each.number(),
              "Basket " + each.number() + ": " + Words.count(pieces, "piece"),
              Words.capital(contents(each))));
    }
    rows.sort(Comparator.comparing(row -> row.number() != basket));
    return rows;
  }

  /** {@code pushrods 1 EX, 3 EX; lifters 1 EX}. */
  private static String contents(Washing.Basket basket) {
    Map<PartKind, String> byKind =
        basket.parts().stream()
            .map(PartRecord::part)
            .collect(
                Collectors.groupingBy(
                    part -> part.kind(),
                    TreeMap::new,
                    Collectors.mapping(part -> part.home().figures(), Collectors.joining(", "))));
    return byKind.entrySet().stream()
        .map(one -> one.getKey().plural() + " " + one.getValue())
        .collect(Collectors.joining("; "));
  }
}
