package wherefrom.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.BagBook;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shop.BesideAtShop;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopOrder;
import wherefrom.job.shop.ShopSlip;
import wherefrom.job.shop.ShopVisit;
import wherefrom.parts.Part;
import wherefrom.rules.consequence.ShopWork;

/** Visits to the machine shop: what goes, what is wanted, what is back. */
final class ShopCommands {
  private static final int MOST = 9999;
  private static final Option WORK =
      Option.maybe("--work", "WORK", "its kind: counted back, it is the change");
  private static final Option VISIT = Option.needed("--visit", "N", "the visit's number");
  private static final Option VISIT_OR_NEW =
      Option.needed("--visit", "N|new", "the visit's number, or new for the next");

  private ShopCommands() {}

  static List<Command> all() {
    return List.of(fresh(), send(), add(), back(), count(), list(), slip());
  }

  private record VisitRow(int visit) implements Row {
    @Override
    public String text() {
      return Integer.toString(visit);
    }
  }

  private static Command fresh() {
    return Command.of("shop new", "Tells the number that a visit begun now would have.")
        .noting("It is given out with the first line: shop send and shop add with --visit new.")
        .tells((bench, call) -> new VisitRow(new MachineShop(bench.job()).nextVisit()));
  }

  private static Command send() {
    return Command.of(
            "shop send",
            "Puts tagged parts, bags and big parts on a visit's slip.",
            VISIT_OR_NEW,
            Option.needed("--wanted", "TEXT", "the work, with numbers"),
            WORK)
        .takes("CODE…|-")
        .noting(
            "Works for tagged parts: resize (rods, caps), valves, crack-test, other.",
            "Sent again with other work, a bag or a big part has both on its slip.")
        .onJob(
            (bench, call, answer) -> {
              AtomicInteger visit = new AtomicInteger(visit(call));
              return Codes.each(
                  call, answer, code -> send(bench, call, code.get(0), visit, answer));
            });
  }

  /** The visit that is meant; a new one has its number from its first line on. */
  private static int visit(Call call) throws BadInput {
    return call.text("--visit").equals("new")
        ? MachineShop.NEW_VISIT
        : call.number("--visit", 0, 1, MOST);
  }

  /**
   * @param visit the one that is meant; a new one is known here once its first line is written
   */
  private static Status send(
      OpenedJob bench, Call call, String code, AtomicInteger visit, Answer answer) throws BadInput {
    Optional<Subject.Beside> beside = beside(bench, code);
    if (beside.isPresent()) {
      String words = BagBook.of(bench.state()).words(beside.get());
      return said(
          begun(visit, new BesideAtShop(bench.job()).send(visit.get(), beside.get(), wanted(call))),
          words,
          answer);
    }
    Part part = bench.part(code);
    List<Integer> items = List.of(part.item());
    MachineShop shop = new MachineShop(bench.job());
    return said(
        begun(visit, shop.send(visit.get(), items, call.get("--wanted"), work(call))),
        part.words(),
        answer);
  }

  private static MachineShop.Answer begun(AtomicInteger visit, MachineShop.Answer answer) {
    if (answer instanceof MachineShop.Answer.Done done) {
      visit.set(done.visit().number());
    }
    return answer;
  }

  /** What is wanted of a bag or a big part. */
  private static ShopOrder wanted(Call call) throws BadInput {
    return new ShopOrder(work(call), List.of(), "", 1, call.get("--wanted"), "", "", true);
  }

  /** The bag or the big part that a code is the tag of. */
  private static Optional<Subject.Beside> beside(OpenedJob bench, String code) throws BadInput {
    return PhotoFolder.subject(bench.find(code))
        .filter(Subject.Beside.class::isInstance)
        .map(Subject.Beside.class::cast);
  }

  private static ShopWork work(Call call) throws BadInput {
    Optional<String> work = call.find(WORK);
    return work.isEmpty() ? ShopWork.OTHER : Names.find(ShopWork.class, "kind of work", work.get());
  }

  private static Command add() {
    return Command.of(
            "shop add",
            "Puts what carries no tag on a visit's slip.",
            VISIT_OR_NEW,
            WORK,
            Option.several("--where", "WHERE", "at which: B1, B2 or left; left out for all"),
            Option.maybe("--what", "TEXT", "what goes, such as block"),
            Option.needed("--count", "N", "how many pieces"),
            Option.maybe("--wanted", "TEXT", "the work in words; needed without --work"),
            Option.maybe("--size", "SIZE", "the size wanted back, or a step, as ten under"),
            Option.maybe("--within", "SIZE", "how far off is still good"),
            Option.flag("--do-not-lose", "lists it among what must not get lost"))
        .noting("Works: " + Names.all(List.of(ShopWork.values())) + ".")
        .onJob(
            (bench, call, answer) -> {
              ShopOrder order = order(call);
              return said(
                  new MachineShop(bench.job()).add(visit(call), order), order.what(), answer);
            });
  }

  private static ShopOrder order(Call call) throws BadInput {
    ShopWork work = work(call);
    return new ShopOrder(
        work,
        call.listed("--where"),
        call.find("--what").orElse(work.usualThing()),
        call.number("--count", 0, 1, MOST),
        call.text("--wanted"),
        call.text("--size"),
        call.text("--within"),
        call.find("--do-not-lose").isPresent());
  }

  private static Command back() {
    return Command.of(
            "shop back",
            "Checks what bears a tag in, by its code.",
            Option.maybe("--done", "TEXT", "what was done"))
        .takes("CODE…|-")
        .onJob(
            (bench, call, answer) ->
                Codes.each(call, answer, code -> back(bench, call, code.get(0), answer)));
  }

  private static Status back(OpenedJob bench, Call call, String code, Answer answer)
      throws BadInput {
    Optional<Subject.Beside> beside = beside(bench, code);
    if (beside.isPresent()) {
      String words = BagBook.of(bench.state()).words(beside.get());
      return said(new BesideAtShop(bench.job()).back(beside.get()), words, answer);
    }
    Part part = bench.part(code);
    MachineShop shop = new MachineShop(bench.job());
    return said(shop.backByScan(part.item(), call.text("--done")), part.words(), answer);
  }

  private static Command count() {
    return Command.of(
            "shop count",
            "Counts pieces of a line back in, and checks the size where one was wanted.",
            VISIT,
            Option.needed("--line", "N", "the line's number, as shop list gives it"),
            Option.needed("--pieces", "N", "how many were counted"),
            Option.maybe("--size", "SIZE", "the size measured"),
            Option.maybe("--done", "TEXT", "what was done"))
        .noting("Exit status 1 where the size that came back should not be taken home.")
        .onJob(ShopCommands::count);
  }

  private static Status count(OpenedJob bench, Call call, Answer answer) throws BadInput {
    MachineShop.Answer came =
        new BesideAtShop(bench.job())
            .backByCount(
                call.number("--visit", 0, 1, MOST),
                call.number("--line", 0, 1, MOST),
                call.number("--pieces", 0, 1, MOST),
                call.text("--size"),
                call.text("--done"));
    return said(came, "line " + call.get("--line"), answer);
  }

  private static Status said(MachineShop.Answer came, String what, Answer answer) throws BadInput {
    if (came instanceof MachineShop.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    MachineShop.Answer.Done done = (MachineShop.Answer.Done) came;
    ShopVisit visit = done.visit();
    answer.row(
        new Row.Told(
            Answer.cells("visit " + visit.number(), what, done.sentence()),
            Json.object(
                "visit", visit.number(),
                "what", what,
                "pieces", visit.pieces(),
                "away", visit.missing(),
                "good", done.good(),
                "sentence", done.sentence())));
    return Status.stoppedIf(!done.good());
  }

  private static Command list() {
    return Command.of(
            "shop list",
            "Lists every visit, or what is still away: visit, line, what, wanted, away.",
            Option.flag("--away", "only what is still away"))
        .lists(
            (bench, call) -> {
              boolean awayOnly = call.find("--away").isPresent();
              return new MachineShop(bench.job())
                  .visits().stream()
                      .flatMap(visit -> ShopRow.of(bench, visit).stream())
                      .filter(row -> !awayOnly || row.away() > 0);
            });
  }

  private static Command slip() {
    return Command.of(
            "shop slip",
            "Writes a visit's slip as PDF: what goes, what is wanted, what must not get lost.",
            VISIT,
            Option.needed("--out", "F.pdf", "where to write; - for standard output"),
            PaperOption.BINDER.option(),
            Outlet.REPLACE)
        .onJob(ShopCommands::slip);
  }

  private static Status slip(OpenedJob bench, Call call, Answer answer)
      throws BadInput, IOException {
    int number = call.number("--visit", 0, 1, MOST);
    ShopVisit visit =
        new MachineShop(bench.job())
            .findVisit(number)
            .orElseThrow(() -> new BadInput("There is no visit " + number + "."));
    Outlet outlet = Outlet.get(call, "--out", answer);
    String name = bench.state().name();
    Unprintable.warning(call.services().printer(), name, visit).ifPresent(answer::say);
    PaperSize paper = PaperOption.BINDER.get(call);
    call.services().reports().writeSlip(ShopSlip.of(bench.job(), visit), paper, outlet.out());
    return answer.only(
        new Row.Told(
            outlet.name() + ": " + visit.pieces() + " pieces.",
            Json.object(
                "file", outlet.name(),
                "pieces", visit.pieces(),
                "doNotLose", List.copyOf(visit.doNotLose()))));
  }
}
