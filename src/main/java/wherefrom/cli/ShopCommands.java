package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import wherefrom.job.ports.Equipment;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopOrder;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.print.Unprintable;
import wherefrom.parts.Part;
import wherefrom.rules.consequence.ShopWork;

/** Visits to the machine shop: what goes, what is wanted, what is back. */
final class ShopCommands {
  private static final int MOST = 9999;
  private static final Option WORK =
      Option.maybe("--work", "WORK", "its kind: counted back, it is the change");
  private static final Option VISIT = Option.needed("--visit", "N", "the visit's number");

  private final Equipment equipment;
  private final Codes codes;

  private ShopCommands(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.codes = Codes.single(in);
  }

  static List<Command> all(Equipment equipment, BufferedReader in) {
    ShopCommands shop = new ShopCommands(equipment, in);
    return List.of(
        shop.fresh(), shop.send(), shop.add(), shop.back(), shop.count(), shop.list(), shop.slip());
  }

  private record VisitRow(int visit) implements Row {
    @Override
    public String text() {
      return Integer.toString(visit);
    }
  }

  private Command fresh() {
    return Command.of("shop new", "", "Gives the number for a new visit to the shop.", Option.JOB)
        .tells(
            equipment, (bench, call) -> new VisitRow(new MachineShop(bench.job()).nextVisit()));
  }

  private Command send() {
    return Command.of(
            "shop send",
            "CODE…|-",
            "Puts tagged parts on a visit's slip.",
            Option.JOB,
            VISIT,
            Option.needed("--wanted", "TEXT", "the work, with numbers"),
            WORK)
        .noting("Works for tagged parts: resize (rods, caps), valves, crack-test, other.")
        .onJob(
            equipment,
            (bench, call, answer) ->
                codes.each(call, answer, code -> send(bench, call, code.get(0), answer)));
  }

  private static Status send(Bench bench, Call call, String code, Answer answer) throws BadInput {
    int visit = call.number("--visit", 0, 1, MOST);
    Part part = bench.part(code);
    List<Integer> items = List.of(part.item());
    return said(
        new MachineShop(bench.job()).send(visit, items, call.get("--wanted"), work(call)),
        part.words(),
        answer);
  }

  private static ShopWork work(Call call) throws BadInput {
    Optional<String> work = call.find(WORK);
    return work.isEmpty() ? ShopWork.OTHER : Names.find(ShopWork.class, "kind of work", work.get());
  }

  private Command add() {
    return Command.of(
            "shop add",
            "",
            "Puts what carries no tag on a visit's slip.",
            Option.JOB,
            VISIT,
            WORK,
            Option.several("--where", "WHERE", "at which: B1, B2 or left; left out for all"),
            Option.maybe("--what", "TEXT", "what goes, such as block"),
            Option.needed("--count", "N", "how many pieces"),
            Option.maybe("--wanted", "TEXT", "the work in words; needed without --work"),
            Option.maybe("--size", "SIZE", "the size wanted back, or a step, as ten under"),
            Option.maybe("--within", "SIZE", "how far from it is good"),
            Option.flag("--do-not-lose", "lists it among what must not get lost"))
        .noting("Works: " + Names.all(List.of(ShopWork.values())) + ".")
        .onJob(
            equipment,
            (bench, call, answer) -> {
              ShopOrder order = order(call);
              int visit = call.number("--visit", 0, 1, MOST);
              return said(new MachineShop(bench.job()).add(visit, order), order.what(), answer);
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

  private Command back() {
    return Command.of(
            "shop back",
            "CODE…|-",
            "Checks tagged parts in, by their codes.",
            Option.JOB,
            Option.maybe("--done", "TEXT", "what was done"))
        .onJob(
            equipment,
            (bench, call, answer) ->
                codes.each(call, answer, code -> back(bench, call, code.get(0), answer)));
  }

  private static Status back(Bench bench, Call call, String code, Answer answer) throws BadInput {
    Part part = bench.part(code);
    MachineShop shop = new MachineShop(bench.job());
    return said(shop.backByScan(part.item(), call.text("--done")), part.words(), answer);
  }

  private Command count() {
    return Command.of(
            "shop count",
            "",
            "Checks pieces of a line in by count, and by value where a size was wanted.",
            Option.JOB,
            VISIT,
            Option.needed("--line", "N", "the line's number, as shop list gives it"),
            Option.needed("--pieces", "N", "how many were counted"),
            Option.maybe("--size", "SIZE", "the size measured"),
            Option.maybe("--done", "TEXT", "what was done"))
        .noting("Exit status 1 where the size that came back should not be taken home.")
        .onJob(equipment, ShopCommands::count);
  }

  private static Status count(Bench bench, Call call, Answer answer) throws BadInput {
    MachineShop.Answer came =
        new MachineShop(bench.job())
            .backByCount(
                call.number("--visit", 0, 1, MOST),
                call.number("--line", 0, 1, MOST),
                call.number("--pieces", 0, 1, MOST),
                call.text("--size"),
                call.text("--done"));
    return said(came, "line " + call.get("--line"), answer);
  }

  private record DoneRow(
      int visit, String what, int pieces, int away, boolean good, String sentence) implements Row {
    @Override
    public String text() {
      return Answer.cells("visit " + visit, what, sentence);
    }
  }

  private static Status said(MachineShop.Answer came, String what, Answer answer) throws BadInput {
    if (came instanceof MachineShop.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    MachineShop.Answer.Done done = (MachineShop.Answer.Done) came;
    ShopVisit visit = done.visit();
    answer.row(
        new DoneRow(
            visit.number(), what, visit.pieces(), visit.missing(), done.good(), done.sentence()));
    return Status.stoppedIf(!done.good());
  }

  private Command list() {
    return Command.of(
            "shop list",
            "",
            "Lists every visit, or what is still away: visit, line, what, wanted, away.",
            Option.JOB,
            Option.flag("--away", "only what is still away"))
        .lists(
            equipment,
            (bench, call) -> {
              boolean awayOnly = call.find("--away").isPresent();
              return new MachineShop(bench.job())
                  .visits().stream()
                      .flatMap(visit -> ShopRow.of(bench, visit).stream())
                      .filter(row -> !awayOnly || row.away() > 0);
            });
  }

  private Command slip() {
    return Command.of(
            "shop slip",
            "",
            "Writes a visit's slip as PDF: what goes, what is wanted, what must not get lost.",
            Option.JOB,
            VISIT,
            Option.needed("--out", "F.pdf", "where to write; - for standard output"),
            Outlet.REPLACE)
        .onJob(equipment, this::slip);
  }

  private record SlipRow(String file, int pieces, List<String> doNotLose) implements Row {
    @Override
    public String text() {
      return file + ": " + pieces + " pieces.";
    }
  }

  private Status slip(Bench bench, Call call, Answer answer) throws BadInput, IOException {
    int number = call.number("--visit", 0, 1, MOST);
    ShopVisit visit =
        new MachineShop(bench.job())
            .findVisit(number)
            .orElseThrow(() -> new BadInput("There is no visit " + number + "."));
    Outlet outlet = Outlet.get(call, "--out", answer);
    String name = bench.state().name();
    Unprintable.warning(equipment.printer(), name, visit).ifPresent(answer::say);
    equipment.reports().writeSlip(name, visit, outlet.out());
    return answer.only(new SlipRow(outlet.name(), visit.pieces(), List.copyOf(visit.doNotLose())));
  }
}
