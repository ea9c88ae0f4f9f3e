package wherefrom.job.shop;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import wherefrom.job.EntryRows;
import wherefrom.job.EntryTable;
import wherefrom.job.FigureParser;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.ShopWork;

/** Visits to the machine shop: the slip, and checking in by scan, by count and by value. */
public final class MachineShop {
  /** The visit that an entry begins or adds to. */
  private static final EntryTable<MachineShop, Integer> VISIT =
      EntryRows.<MachineShop, Integer>none()
          .on(SentToShop.class, (shop, sent) -> sent.visit())
          .on(ShopLineAdded.class, (shop, line) -> line.visit())
          .others(0);

  /** In place of a visit's number: a new visit, whose number is given out with its first line. */
  public static final int NEW_VISIT = 0;

  /** What became of a request. */
  public sealed interface Answer {
    /**
     * Recorded.
     *
     * @param visit as it is now
     * @param good false of a size that came back and should not be taken home
     */
    record Done(ShopVisit visit, String sentence, boolean good) implements Answer {}

    /** Nothing was recorded; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private final OpenJob job;

  public MachineShop(OpenJob job) {
    this.job = job;
  }

  /** What a part was sent to the machine shop for; empty where nobody said. */
  public String sentFor(int item) {
    return job.state().standing().stream()
        .map(LoggedEntry::entry)
        .filter(SentToShop.class::isInstance)
        .map(SentToShop.class::cast)
        .filter(sent -> sent.items().contains(item))
        .reduce((earlier, later) -> later)
        .map(sent -> sent.wanted().isEmpty() ? sent.work().words() : sent.wanted())
        .orElse("");
  }

  /** The number that a visit begun now would have; never used twice. */
  public int nextVisit() {
    return 1
        + job.history().stream().mapToInt(logged -> VISIT.of(this, logged.entry())).max().orElse(0);
  }

  /** Tagged parts go, with what is wanted of them; no change follows from it by itself. */
  public Answer send(int visit, Collection<Integer> items, String wanted) {
    return send(visit, items, wanted, ShopWork.OTHER);
  }

  /** Tagged parts go for a kind of work, with what is wanted of them. */
  public Answer send(int visit, Collection<Integer> items, String wanted, ShopWork work) {
    return job.asOne(() -> sendOnce(visit, items, wanted, work));
  }

  private int number(int visit) {
    return visit == NEW_VISIT ? nextVisit() : visit;
  }

  private Answer sendOnce(int wished, Collection<Integer> items, String wanted, ShopWork work) {
    int visit = number(wished);
    if (visit < 1 || items.isEmpty() || wanted.isBlank()) {
      return new Answer.Refused("Name the parts and say what is wanted of them, with numbers.");
    }
    Optional<String> fault =
        items.stream().flatMap(item -> findFault(item, work).stream()).findFirst();
    if (fault.isPresent()) {
      return new Answer.Refused(fault.get());
    }
    job.record(new SentToShop(visit, List.copyOf(items), wanted.strip(), work));
    String apart = new RodsTogether(job.state(), visit).sentence();
    return done(visit, items.size() + " on the slip." + (apart.isEmpty() ? "" : " " + apart));
  }

  /** Why a part cannot go for such work, in a sentence. */
  private Optional<String> findFault(int item, ShopWork work) {
    Optional<PartRecord> part = job.state().findPart(item);
    if (part.isEmpty()) {
      return Optional.of("There is no part number " + item + " in this job.");
    }
    String kind = part.get().part().kind().word();
    if (part.get().where() != Whereabouts.OUT) {
      String where = part.get().part().words() + " is " + part.get().where().words() + ".";
      return Optional.of("Only a part that is out can go to the machine shop. " + where);
    }
    return work.isFor(part.get().part().kind())
        ? Optional.empty()
        : Optional.of("\"" + work.words() + "\" is not work for a " + kind + ".");
  }

  /**
   * Adds a line for what carries no tag, or for work with a figure.
   *
   * @param target the size wanted back, or blank
   * @param tolerance how far from it is good, or blank
   * @param keep true of what must not get lost
   */
  public Answer add(
      int visit,
      String what,
      int count,
      String wanted,
      String target,
      String tolerance,
      boolean keep) {
    return add(
        visit,
        new ShopOrder(ShopWork.OTHER, List.of(), what, count, wanted, target, tolerance, keep));
  }

  /** Adds a line for a kind of work: counted back, it is the change that it amounts to. */
  public Answer add(int visit, ShopOrder order) {
    return job.asOne(() -> addOnce(visit, order));
  }

  private Answer addOnce(int wished, ShopOrder order) {
    int visit = number(wished);
    if (visit < 1) {
      return new Answer.Refused("Visits are numbered from 1.");
    }
    return order.line(
        job.state(),
        visit,
        nextLine(visit),
        line -> {
          job.record(line);
          return done(line.visit(), line.count() + " " + line.what() + " on the slip.");
        },
        Answer.Refused::new);
  }

  /** A tagged part is back, by its scan. */
  public Answer backByScan(int item, String done) {
    return job.asOne(() -> backByScanOnce(item, done));
  }

  private Answer backByScanOnce(int item, String done) {
    Optional<PartRecord> part =
        job.state().findPart(item).filter(one -> one.where() == Whereabouts.AT_SHOP);
    if (part.isEmpty()) {
      return new Answer.Refused("This part is not recorded as being at the machine shop.");
    }
    int visit = visitOf(item);
    job.record(new BackFromShop(visit, List.of(item), done.strip()));
    return done(visit, part.get().part().words() + " is back.");
  }

  /** Pieces of a line are back, by count, and by value where a size was wanted. */
  public Answer backByCount(int visit, int line, int count, String figure, String done) {
    return job.asOne(() -> backByCountOnce(visit, line, count, figure, done));
  }

  private Answer backByCountOnce(int visit, int line, int count, String figure, String done) {
    Optional<ShopVisit.Line> known =
        findVisit(visit).stream()
            .flatMap(one -> one.lines().stream())
            .filter(one -> one.line().line() == line)
            .findFirst();
    if (known.isEmpty()) {
      return new Answer.Refused("Visit " + visit + " has no line " + line + ".");
    }
    if (count < 1 || count > known.get().missing()) {
      return new Answer.Refused(
          "Only "
              + known.get().missing()
              + " "
              + known.get().line().what()
              + " are still at the shop; you counted "
              + count
              + ". Count again.");
    }
    return figure.isBlank()
        ? counted(known.get(), visit, count, done.strip())
        : read(figure, size -> measured(known.get(), visit, count, size, done.strip()));
  }

  private Answer counted(ShopVisit.Line line, int visit, int count, String done) {
    job.record(new ShopLineBack(visit, line.line().line(), count, Optional.empty(), done));
    String size = line.target().map(t -> " Measure them: wanted is " + t + ".").orElse("");
    return done(visit, count + " back." + size);
  }

  private Answer measured(ShopVisit.Line line, int visit, int count, Amount size, String done) {
    ShopValue came = new ShopValue(line.line(), size);
    if (came.isMixedUp()) {
      return new Answer.Refused(came.words());
    }
    job.record(new ShopLineBack(visit, line.line().line(), count, Optional.of(size), done));
    return new Answer.Done(
        findVisit(visit).orElseThrow(), count + " back. " + came.words(), came.isGood());
  }

  /** Every visit, the first first. */
  public List<ShopVisit> visits() {
    return ShopVisits.of(job.state());
  }

  public Optional<ShopVisit> findVisit(int number) {
    return visits().stream().filter(visit -> visit.number() == number).findFirst();
  }

  int visitOf(int item) {
    return visits().stream()
        .filter(visit -> visit.parts().stream().anyMatch(s -> s.part().item() == item && !s.back()))
        .mapToInt(ShopVisit::number)
        .max()
        .orElse(1);
  }

  private int nextLine(int visit) {
    return 1
        + job.history().stream()
            .map(LoggedEntry::entry)
            .filter(entry -> entry instanceof ShopLineAdded line && line.visit() == visit)
            .mapToInt(entry -> ((ShopLineAdded) entry).line())
            .max()
            .orElse(0);
  }

  private Answer done(int visit, String sentence) {
    return new Answer.Done(findVisit(visit).orElseThrow(), sentence, true);
  }

  private Answer read(String text, java.util.function.Function<Amount, Answer> then) {
    return FigureParser.read(
        text, job.state().units(), Dimension.LENGTH, then, Answer.Refused::new);
  }
}
