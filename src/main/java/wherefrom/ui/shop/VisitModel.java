package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.shop.BesideAtShop;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.RodsTogether;
import wherefrom.job.shop.ShopOrder;
import wherefrom.job.shop.ShopVisit;
import wherefrom.parts.Part;
import wherefrom.text.Words;

/** One visit to the machine shop: what is put on it, and what of it is back. */
final class VisitModel implements PartReceiver {
  /** What is not back yet. */
  private static final String AT_SHOP = "AT THE SHOP";

  /**
   * A row of the visit.
   *
   * @param name of the part, or of what carries no tag
   * @param where it is
   * @param item the part; 0 for what carries no tag
   * @param line the line; 0 for a part
   * @param away how many pieces are not back
   */
  record Row(String name, String where, List<String> lines, int item, int line, int away) {
    Row {
      lines = List.copyOf(lines);
    }

    String heading() {
      return heading(where);
    }

    /** What can be pressed is what is not back: large letters need not say it in each row. */
    String briefHeading() {
      return heading(where.replace(AT_SHOP, "").strip());
    }

    private String heading(String told) {
      return told.isEmpty() ? name : name + ": " + told;
    }

    /** What is to be done when it comes back: several without a tag are counted. */
    String comesBack() {
      boolean counted = line > 0 && away > 1;
      return (counted ? "Count back: " : "It is back: ") + (item > 0 ? Words.small(name) : name);
    }
  }

  private final OpenJob job;
  private int number;
  private boolean checkingIn;
  private WorkWanted wanted = WorkWanted.NOTHING;

  /**
   * @param number {@link MachineShop#NEW_VISIT} for one that begins with its first line
   * @param checkingIn whether parts that are scanned come back, or go
   */
  VisitModel(OpenJob job, int number, boolean checkingIn) {
    this.job = job;
    this.number = number;
    this.checkingIn = checkingIn;
  }

  private MachineShop shop() {
    return new MachineShop(job);
  }

  /** Its number; of one that has not begun the number that it would have now. */
  int number() {
    return number == MachineShop.NEW_VISIT ? shop().nextVisit() : number;
  }

  boolean checkingIn() {
    return checkingIn;
  }

  void checkIn(boolean on) {
    checkingIn = on;
  }

  WorkWanted wanted() {
    return wanted;
  }

  void want(WorkWanted now) {
    wanted = now;
  }

  Optional<ShopVisit> visit() {
    return shop().findVisit(number);
  }

  /** {@code 6 at the shop}; while it is put on they may be here still. */
  String aside() {
    String where = checkingIn ? " at the shop" : " on the slip";
    return visit()
        .map(visit -> visit.missing() == 0 ? "all back" : visit.missing() + where)
        .orElse("nothing on it");
  }

  /** What is to come back next; nothing where all of it is back, or while it is put on. */
  Optional<Row> findNext() {
    return checkingIn
        ? rows().stream().filter(row -> row.away() > 0).findFirst()
        : Optional.empty();
  }

  static String count(ShopVisit visit) {
    String pieces = Words.count(visit.pieces(), "piece");
    return visit.missing() == 0
        ? pieces + ", all back."
        : pieces + ", " + visit.missing() + " still at the shop.";
  }

  @Override
  public String prompt() {
    if (checkingIn) {
      return "Scan or press what is back.";
    }
    return wanted.work().isEmpty()
        ? "Say what is wanted, then scan each part that goes."
        : "Scan each part that goes, to " + wanted.words() + ".";
  }

  @Override
  public String briefPrompt() {
    if (checkingIn) {
      return prompt();
    }
    return wanted.work().isEmpty() ? "Say what is wanted first." : "Scan each part that goes.";
  }

  @Override
  public ScanOutcome take(PartRecord part) {
    if (checkingIn) {
      return came(shop().backByScan(part.part().item(), ""));
    }
    return wanted.work().isEmpty()
        ? ScanOutcome.refused("First say what is wanted.")
        : came(
            sent(shop().send(number, List.of(part.part().item()), wanted.words(), wanted.kind())),
            part.part());
  }

  /** A visit has its number from its first line on. */
  private MachineShop.Answer sent(MachineShop.Answer answer) {
    if (answer instanceof MachineShop.Answer.Done done) {
      number = done.visit().number();
    }
    return answer;
  }

  private Optional<String> missing(Part part) {
    return new RodsTogether(job.state(), number).missing(part);
  }

  /** It is on the slip, but may not go alone. */
  private ScanOutcome came(MachineShop.Answer answer, Part part) {
    String done = Words.capital(named(part)) + " is on the slip.";
    return missing(part)
        .map(words -> ScanOutcome.ask(done + " " + words))
        .orElseGet(() -> came(answer, done));
  }

  /** A bag or a big part goes as a line of the slip, or is back. */
  @Override
  public Optional<ScanOutcome> beside(Subject.Beside what) {
    BesideAtShop away = new BesideAtShop(job);
    if (checkingIn) {
      return Optional.of(came(away.back(what)));
    }
    if (wanted.work().isEmpty()) {
      return Optional.of(ScanOutcome.refused("First say what is wanted."));
    }
    ShopOrder order =
        new ShopOrder(
            wanted.kind(), List.of(), "", 1, wanted.work(), wanted.size(), wanted.within(), true);
    return Optional.of(came(sent(away.send(number, what, order))));
  }

  private static ScanOutcome came(MachineShop.Answer answer, String done) {
    return answer instanceof MachineShop.Answer.Refused refused
        ? ScanOutcome.refused(refused.sentence())
        : ScanOutcome.right(done);
  }

  private static ScanOutcome came(MachineShop.Answer answer) {
    if (answer instanceof MachineShop.Answer.Done wrong && !wrong.good()) {
      return ScanOutcome.ask(wrong.sentence());
    }
    return answer instanceof MachineShop.Answer.Done done
        ? came(answer, done.sentence())
        : came(answer, "");
  }

  ScanOutcome add(ShopOrder order) {
    return came(sent(shop().add(number, order)));
  }

  ScanOutcome back(int line, int count, String figure) {
    return came(new BesideAtShop(job).backByCount(number, line, count, figure, ""));
  }

  /** The size wanted of a line; empty where none was said. */
  Optional<String> target(int line) {
    return visit().stream()
        .flatMap(visit -> visit.lines().stream())
        .filter(one -> one.line().line() == line)
        .findFirst()
        .flatMap(ShopVisit.Line::target);
  }

  /** What is still away first when checking in, what went on last when putting on. */
  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    visit()
        .ifPresent(
            visit -> {
              visit.lines().forEach(line -> rows.add(row(line)));
              visit.parts().forEach(sent -> rows.add(row(sent)));
            });
    if (checkingIn) {
      rows.sort(Comparator.comparing(row -> row.away() == 0));
    } else {
      Collections.reverse(rows);
    }
    return rows;
  }

  private String named(Part part) {
    return PlaceWords.named(job.state().layout(), part.home());
  }

  private Row row(ShopVisit.Sent sent) {
    Part part = sent.part();
    int away = sent.back() ? 0 : part.pieces();
    return new Row(
        Words.capital(named(part)),
        where(away, part.pieces()),
        Stream.concat(Stream.of(Words.capital(sent.wanted())), missing(part).stream()).toList(),
        part.item(),
        0,
        away);
  }

  /** What is put on a slip goes with it: that it is away is said once it is to come back. */
  private String where(int missing, int count) {
    String part = missing == count ? "" : missing + " of " + count + " ";
    String back = missing == count ? "" : count - missing + " back";
    return missing == 0 ? "back" : checkingIn ? part + AT_SHOP : back;
  }

  private Row row(ShopVisit.Line line) {
    int count = line.line().count();
    String where = where(line.missing(), count);
    String keep = line.line().keep() ? "DO NOT LOSE. " : "";
    List<String> lines = new ArrayList<>();
    lines.add(
        keep
            + Words.capital(line.line().wanted())
            + line.target().map(size -> " " + size).orElse(""));
    if (!line.returned().isEmpty()) {
      lines.add("Measured on return: " + String.join("; ", line.returned()));
    }
    return new Row(
        count + " ×\u00a0" + line.line().what(),
        where,
        lines,
        0,
        line.line().line(),
        line.missing());
  }
}
