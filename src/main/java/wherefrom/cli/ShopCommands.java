package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.ports.Equipment;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopOrder;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.tags.Found;
import wherefrom.rules.consequence.ShopWork;

/** Visits to the machine shop: what goes, what is wanted, what is back. */
final class ShopCommands {
  private static final int MOST = 9999;
  private static final Option WORK =
      Option.maybe("--work", "WORK", "its kind: counted back, it is the change");
  private static final String WORKS = "Works: " + Names.all(List.of(ShopWork.values())) + ".";
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

  private JobCommand command(Usage usage, JobCommand.Deed deed) {
    return new JobCommand(usage, deed, equipment);
  }

  private Command fresh() {
    return command(
        Usage.of("shop new", "", "Gives the number for a new visit to the shop.", Option.JOB),
        (bench, call, answer) -> {
          int visit = new MachineShop(bench.job()).nextVisit();
          answer.only(Fields.of("visit", visit), Integer.toString(visit));
          return Status.RIGHT;
        });
  }

  private Command send() {
    return command(
        Usage.of(
                "shop send",
                "CODE…|-",
                "Puts tagged parts on a visit's slip.",
                Option.JOB,
                VISIT,
                Option.needed("--wanted", "TEXT", "the work, with numbers"),
                WORK)
            .noting("Works for tagged parts: resize (rods, caps), valves, crack-test, other."),
        (bench, call, answer) ->
            codes.each(call, answer, code -> send(bench, call, code.get(0), answer)));
  }

  private static Status send(Bench bench, Call call, String code, Answer answer) throws BadInput {
    int visit = call.number("--visit", 0, 1, MOST);
    int item = item(bench, code);
    return said(
        new MachineShop(bench.job()).send(visit, List.of(item), call.get("--wanted"), work(call)),
        bench.job().state().getPart(item).part().words(),
        answer);
  }

  private static ShopWork work(Call call) throws BadInput {
    Optional<String> work = call.find("--work");
    return work.isEmpty() ? ShopWork.OTHER : Names.find(ShopWork.class, "kind of work", work.get());
  }

  private static int item(Bench bench, String code) throws BadInput {
    Found found = bench.find(code);
    if (found instanceof Found.APart part) {
      return part.part().part().item();
    }
    throw new BadInput(code + " is no part of this job: " + Meaning.sentence(found));
  }

  private Command add() {
    return command(
        Usage.of(
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
            .noting(WORKS),
        (bench, call, answer) -> {
          ShopOrder order = order(call);
          return said(
              new MachineShop(bench.job()).add(call.number("--visit", 0, 1, MOST), order),
              order.what(),
              answer);
        });
  }

  private static ShopOrder order(Call call) throws BadInput {
    ShopWork work = work(call);
    return new ShopOrder(
        work,
        call.listed("--where"),
        call.find("--what").orElse(work.usualThing()),
        call.number("--count", 0, 1, MOST),
        call.find("--wanted").orElse(""),
        call.find("--size").orElse(""),
        call.find("--within").orElse(""),
        call.find("--do-not-lose").isPresent());
  }

  private Command back() {
    return command(
        Usage.of(
            "shop back",
            "CODE…|-",
            "Checks tagged parts in, by their codes.",
            Option.JOB,
            Option.maybe("--done", "TEXT", "what was done")),
        (bench, call, answer) ->
            codes.each(
                call,
                answer,
                code -> {
                  int item = item(bench, code.get(0));
                  return said(
                      new MachineShop(bench.job()).backByScan(item, call.find("--done").orElse("")),
                      bench.job().state().getPart(item).part().words(),
                      answer);
                }));
  }

  private Command count() {
    return command(
        Usage.of(
                "shop count",
                "",
                "Checks pieces of a line in by count, and by value where a size was wanted.",
                Option.JOB,
                VISIT,
                Option.needed("--line", "N", "the line's number, as shop list gives it"),
                Option.needed("--pieces", "N", "how many were counted"),
                Option.maybe("--size", "SIZE", "the size measured"),
                Option.maybe("--done", "TEXT", "what was done"))
            .noting("Exit status 1 where the size that came back should not be taken home."),
        (bench, call, answer) ->
            said(
                new MachineShop(bench.job())
                    .backByCount(
                        call.number("--visit", 0, 1, MOST),
                        call.number("--line", 0, 1, MOST),
                        call.number("--pieces", 0, 1, MOST),
                        call.find("--size").orElse(""),
                        call.find("--done").orElse("")),
                "line " + call.get("--line"),
                answer));
  }

  private static Status said(MachineShop.Answer came, String what, Answer answer) throws BadInput {
    if (came instanceof MachineShop.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    MachineShop.Answer.Done done = (MachineShop.Answer.Done) came;
    answer.row(
        Fields.of("visit", done.visit().number())
            .and("what", what)
            .and("pieces", done.visit().pieces())
            .and("away", done.visit().missing())
            .and("good", done.good())
            .and("sentence", done.sentence()),
        Answer.cells("visit " + done.visit().number(), what, done.sentence()));
    return Status.stoppedIf(!done.good());
  }

  private Command list() {
    return command(
        Usage.of(
            "shop list",
            "",
            "Lists every visit, or what is still away: visit, line, what, wanted, away.",
            Option.JOB,
            Option.flag("--away", "only what is still away")),
        (bench, call, answer) -> {
          boolean awayOnly = call.find("--away").isPresent();
          for (ShopVisit visit : new MachineShop(bench.job()).visits()) {
            for (ShopRow row : ShopRow.of(bench, visit)) {
              if (!awayOnly || row.away() > 0) {
                answer.row(row.fields(), row.cells());
              }
            }
          }
          return Status.RIGHT;
        });
  }

  private Command slip() {
    return command(
        Usage.of(
            "shop slip",
            "",
            "Writes a visit's slip as PDF: what goes, what is wanted, what must not get lost.",
            Option.JOB,
            VISIT,
            Option.needed("--out", "F.pdf", "where to write; - for standard output"),
            Outlet.REPLACE),
        this::slip);
  }

  private Status slip(Bench bench, Call call, Answer answer) throws BadInput, IOException {
    int number = call.number("--visit", 0, 1, MOST);
    ShopVisit visit =
        new MachineShop(bench.job())
            .findVisit(number)
            .orElseThrow(() -> new BadInput("There is no visit " + number + "."));
    Outlet outlet = Outlet.get(call, "--out", answer);
    String name = bench.job().state().name();
    Unprintable.warning(equipment.printer(), name, visit).ifPresent(answer::say);
    equipment.reports().writeSlip(name, visit, outlet.out());
    List<String> keep = new ArrayList<>(visit.doNotLose());
    answer.only(
        Fields.of("file", outlet.name()).and("pieces", visit.pieces()).and("doNotLose", keep),
        outlet.name() + ": " + visit.pieces() + " pieces.");
    return Status.RIGHT;
  }
}
