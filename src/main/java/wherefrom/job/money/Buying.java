package wherefrom.job.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.OfferTyped;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.GoodsSize;
import wherefrom.text.Words;

/** The buying list as it is really bought: in sets, with spares, by supplier, checked in. */
public final class Buying {
  private static final int MOST = 999;
  private static final Article VALVES = new Article.Known(Goods.VALVES);

  private static final EntryFold<Buying> READS =
      EntryFold.<Buying>none()
          .on(OfferTyped.class, Buying::take)
          .on(GoodsArrived.class, (buying, it) -> buying.arrivals.add(it))
          .on(GoodsMeasured.class, (buying, it) -> buying.measured.add(new OneMeasured(it)));

  private final EngineJob job;
  private final Map<String, Map<Article, SupplierOffer.PackPrice>> offers =
      new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  private final List<GoodsArrived> arrivals = new ArrayList<>();
  private final List<OneMeasured> measured = new ArrayList<>();
  private final PartNumbers numbers;
  private final GasketSet set;

  public Buying(EngineJob job) {
    this.job = job;
    numbers = PartNumbers.of(job);
    set = GasketSet.of(job);
    job.standing().forEach(logged -> READS.take(this, logged));
  }

  private void take(OfferTyped offer) {
    offers
        .computeIfAbsent(offer.supplier(), name -> new TreeMap<>())
        .put(
            offer.what(), new SupplierOffer.PackPrice(offer.holds(), Money.ofCents(offer.cents())));
  }

  /** All that is wanted: parts with tags by size, then things without; ordered ones among them. */
  public List<BuyLine> lines() {
    return job.remember(Lines.class, state -> new Lines(workOut())).all();
  }

  private record Lines(List<BuyLine> all) {}

  private List<BuyLine> workOut() {
    List<BuyLine> lines = new ArrayList<>();
    new ReplacementList(job).lines().forEach(one -> lines.add(line(one)));
    PurchaseList besides = new PurchaseList(job);
    besides.all().forEach(one -> lines.add(line(one)));
    boolean setListed = lines.stream().anyMatch(line -> line.what().equals(GasketSet.WHAT));
    boolean setWanted = lines.stream().anyMatch(line -> set.holds(line.what()) > 0);
    if (setWanted && !setListed) {
      lines.add(line(GasketSet.WHAT, 1, "it holds gaskets of this list"));
    }
    Spare.beside(job, lines).forEach(one -> lines.add(line(one.what(), 0, one.reason())));
    return withSideUnsaid(withArrived(lines));
  }

  /** What came fills the lines in their order, where several want the same. */
  private List<BuyLine> withArrived(List<BuyLine> lines) {
    List<BuyLine> filled = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      BuyLine line = lines.get(at);
      int before = filled.stream().filter(line::isAlike).mapToInt(BuyLine::arrived).sum();
      boolean last = lines.subList(at + 1, lines.size()).stream().noneMatch(line::isAlike);
      filled.add(line.taking(arrived(line) - before, last));
    }
    return List.copyOf(filled);
  }

  /** Valves that came before their side was asked for fill the lines of valves in their order. */
  private List<BuyLine> withSideUnsaid(List<BuyLine> lines) {
    List<BuyLine> filled = new ArrayList<>(lines);
    int left = arrived(VALVES, GoodsSize.none());
    for (int at = 0; at < filled.size() && left > 0; at++) {
      BuyLine line = filled.get(at);
      if (line.what().equals(VALVES)) {
        boolean last = lines.subList(at + 1, lines.size()).stream().noneMatch(line::isSameThing);
        int taken = last ? left : Math.min(left, line.open());
        filled.set(at, line.taking(line.arrived() + taken, true));
        left -= taken;
      }
    }
    return List.copyOf(filled);
  }

  private int arrived(BuyLine line) {
    return arrived(line.what(), line.size());
  }

  private int arrived(Article what, GoodsSize size) {
    return arrivals.stream()
        .filter(one -> one.right() && one.what().equals(what))
        .filter(one -> one.size().equals(size))
        .mapToInt(GoodsArrived::pieces)
        .sum();
  }

  /** The line of parts to replace. */
  public Optional<BuyLine> find(Replacement one) {
    BuyLine wanted = line(one);
    return lines().stream().filter(wanted::isLineOf).findFirst();
  }

  private BuyLine line(Replacement one) {
    boolean sized = one.size().isStep();
    String reason =
        sized ? one.reason() : Words.withoutStop(one.reason()) + "; size " + one.sizeWords();
    Article what = new Article.Known(Goods.of(one.kind()));
    String words = sized ? one.sizeWords() : one.size().words();
    return line(what, one.size(), words, one.pieces(), reason);
  }

  private BuyLine line(Purchase one) {
    GoodsSize size = GoodsSize.of(one.side());
    return line(one.what(), size, size.words(), one.pieces(), one.reason());
  }

  private BuyLine line(Article what, int pieces, String reason) {
    return line(what, GoodsSize.none(), "", pieces, reason);
  }

  private BuyLine line(Article what, GoodsSize size, String words, int pieces, String reason) {
    SoldAs sold = SoldAs.of(job, what, pieces);
    boolean ordered = new MoneyEntries(job).isOrdered(what);
    int inSet = Math.min(pieces + sold.spares(), set.covers(what));
    List<String> known = numbers.list(what, size);
    return new BuyLine(what, size, words, pieces, sold, ordered, 0, inSet, known, reason);
  }

  /** Each supplier's offer for what is still to come, by name. */
  public List<SupplierOffer> offers() {
    List<BuyLine> lines = lines();
    return offers.entrySet().stream()
        .map(one -> SupplierOffer.of(one.getKey(), one.getValue(), lines))
        .toList();
  }

  /** What came, in the order in which it came; what was wrong among it. */
  public List<GoodsArrived> arrivals() {
    return List.copyOf(arrivals);
  }

  /** What was measured on one of what came, in the order in which it came. */
  public List<OneMeasured> measured() {
    return List.copyOf(measured);
  }

  /** The lines of a thing, in all its sizes. */
  public List<BuyLine> find(Article what) {
    return lines().stream().filter(line -> line.what().equals(what)).toList();
  }

  /** Keeps a supplier's price. */
  public static MoneyBook.Answer offer(
      OpenJob job, String supplier, Article what, int holds, String price) {
    return job.asOne(() -> offerOnce(job, supplier, what, holds, price));
  }

  private static MoneyBook.Answer offerOnce(
      OpenJob job, String supplier, Article what, int holds, String price) {
    Optional<JobCurrency> tender = new MoneyBook(job).findTender();
    Optional<Money> money = tender.map(one -> one.read(price)).orElseGet(() -> Money.find(price));
    if (supplier.isBlank() || what.words().isBlank()) {
      return new MoneyBook.Answer.Refused("Say who offers it, and what.");
    }
    if (holds < 1 || holds > MOST) {
      return new MoneyBook.Answer.Refused("One package holds 1 to " + MOST + " pieces.");
    }
    if (money.isEmpty()) {
      String example = tender.map(JobCurrency::example).orElse("12.50");
      return new MoneyBook.Answer.Refused(
          "\"" + price + "\" is not an amount. Type it like " + example + ".");
    }
    job.record(new OfferTyped(supplier.strip(), what, holds, money.get().cents()));
    return new MoneyBook.Answer.Kept(new MoneyBook(job).budget());
  }

  /** Checks in what came for a line; the sentence says what is wrong, empty where it is kept. */
  public static Optional<String> arrive(
      OpenJob job, BuyLine line, int pieces, String measured, boolean right) {
    return job.asOne(() -> arriveOnce(job, line, pieces, measured, right));
  }

  private static Optional<String> arriveOnce(
      OpenJob job, BuyLine line, int pieces, String measured, boolean right) {
    if (pieces < 1 || pieces > MOST) {
      return Optional.of("Say how many came: 1 to " + MOST + ".");
    }
    if (!line.size().isNone() && measured.isBlank()) {
      return Optional.of("Measure one of them, or read its size off the box. Type that size.");
    }
    job.record(new GoodsArrived(line.what(), line.size(), pieces, measured.strip(), right));
    return Optional.empty();
  }

  /** Checks in what came with what one of them measures, as one act; see {@link #arrive}. */
  public static Optional<String> arrive(
      OpenJob job, BuyLine line, int pieces, OneMeasured one, boolean right) {
    return job.asOne(
        () -> {
          job.record(one.entry());
          return arrive(job, line, pieces, one.words(), right);
        },
        Optional::isEmpty);
  }

  /** {@code 8 of 18 here}; or what to do with what is wrong. */
  public String told(BuyLine before, boolean right) {
    if (!right) {
      return "It is not counted. Send it back.";
    }
    return lines().stream()
        .filter(before::isLineOf)
        .findFirst()
        .map(line -> line.words() + ": " + line.arrivedWords() + ".")
        .orElse("Checked in.");
  }

  /** Suppliers as keys for the window. */
  public List<String> suppliers() {
    return List.copyOf(offers.keySet());
  }
}
