package wherefrom.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.job.FigureParser;
import wherefrom.job.PartRecord;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Proposal;
import wherefrom.job.money.Purchase;
import wherefrom.job.money.Replacement;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Money;
import wherefrom.quantity.Unit;
import wherefrom.rules.size.GoodsSize;

/** Reuse, machine or replace: proposed, decided, and what must be bought. */
final class DecideCommands {
  private static final String CODES = "CODE…|-";
  private static final Option AS = Option.needed("--as", "DECISION", "reuse, machine or replace");

  private DecideCommands() {}

  static List<Command> all() {
    return List.of(decide(), list(), ask(), propose(), set(), buy());
  }

  private record Reason(String sentence, String source) {}

  private record ProposalRow(String code, String part, String proposed, List<Reason> reasons)
      implements Row {
    static ProposalRow of(OpenedJob bench, Part part) {
      Proposal proposal = new Deciding(bench.job()).propose(part.item());
      return new ProposalRow(
          bench.digits(part),
          part.words(),
          proposal.decision().map(Decision::word).orElse("no proposal"),
          proposal.reasons().stream()
              .map(reason -> new Reason(reason.sentence(), reason.source()))
              .toList());
    }

    @Override
    public String text() {
      List<String> lines = new ArrayList<>(List.of(Answer.cells(code, part, proposed)));
      reasons.forEach(each -> lines.add(Answer.cells("", each.sentence(), each.source())));
      return Row.lines(lines);
    }
  }

  private static Command list() {
    return Command.of(
            "decide list",
            "Lists the parts that wait for a decision.",
            Option.flag("--all", "every used part without a decision, held up or not"))
        .lists(
            (bench, call) -> {
              Deciding deciding = new Deciding(bench.job());
              boolean all = call.find("--all").isPresent();
              return (all ? deciding.listWithoutDecision() : deciding.listUndecided())
                  .stream().map(part -> ProposalRow.of(bench, part));
            });
  }

  private record AskRow(boolean everyPart, int waiting) implements Row {
    @Override
    public String text() {
      return (everyPart
              ? "Every used part needs a decision before it is fitted. "
              : "Only parts that something speaks against need a decision. ")
          + "Waiting now: "
          + waiting
          + ".";
    }
  }

  private static Command ask() {
    return Command.of(
            "decide ask",
            "Asks for a decision on every used part before it is fitted, or only on those"
                + " that something speaks against.")
        .takes("every|suspect")
        .noting("Identity is checked always; at first only suspect parts wait.")
        .onJob(DecideCommands::ask);
  }

  private static Status ask(OpenedJob bench, Call call, Answer answer) throws BadInput {
    String which = call.operand("Give every or suspect.");
    if (!List.of("every", "suspect").contains(which)) {
      throw call.wrong("Give every or suspect.");
    }
    Deciding deciding = new Deciding(bench.job());
    deciding.askEveryPart(which.equals("every"));
    answer.row(new AskRow(which.equals("every"), deciding.listUndecided().size()));
    return Status.RIGHT;
  }

  private static Command propose() {
    return Command.of("decide propose", "Says what the rules propose for parts, with the reasons.")
        .takes(CODES)
        .onJob(
            (bench, call, answer) ->
                Codes.each(
                    call,
                    answer,
                    code -> {
                      answer.row(ProposalRow.of(bench, bench.part(code.get(0))));
                      return Status.RIGHT;
                    }));
  }

  private static Decision decision(Call call) throws BadInput {
    return Names.find(Decision.class, "decision", call.get(AS));
  }

  private static Command decide() {
    return Command.of("decide", "Decides about parts.", AS, Option.REASON)
        .takes(CODES)
        .noting("Exit status 1 where a rule forbids the reuse; nothing is decided then.")
        .onJob(DecideCommands::decide);
  }

  private static Status decide(OpenedJob bench, Call call, Answer answer)
      throws BadInput, IOException {
    Decision decision = decision(call);
    String reason = call.get(Option.REASON);
    return Codes.each(
        call,
        answer,
        code -> decide(bench, answer, List.of(bench.part(code.get(0))), decision, reason));
  }

  private static Command set() {
    return Command.of(
            "decide set", "Decides about every used part of a kind at once.", AS, Option.REASON)
        .takes("KIND")
        .onJob(DecideCommands::set);
  }

  private static Status set(OpenedJob bench, Call call, Answer answer) throws BadInput {
    String key = call.operand("Give one kind of part.");
    PartKind kind = Names.find(PartKind.class, "kind of part", key);
    List<Part> parts =
        bench.state().parts().stream()
            .filter(record -> record.where() != Whereabouts.RETIRED)
            .map(PartRecord::part)
            .filter(part -> part.kind() == kind && !part.fresh())
            .toList();
    if (parts.isEmpty()) {
      throw new BadInput("There are no used " + kind.plural() + " in this job.");
    }
    return decide(bench, answer, parts, decision(call), call.get(Option.REASON));
  }

  private record DecidedRow(String code, String part, boolean decided, String decision)
      implements Row {
    @Override
    public String text() {
      return Answer.cells(code, part, decision);
    }
  }

  private static Status decide(
      OpenedJob bench, Answer answer, List<Part> parts, Decision decision, String reason)
      throws BadInput {
    List<Integer> items = parts.stream().map(Part::item).toList();
    Deciding.Answer decided = new Deciding(bench.job()).decide(items, decision, reason);
    if (decided instanceof Deciding.Answer.Refused refused) {
      boolean banned = items.stream().anyMatch(item -> bench.state().findBan(item).isPresent());
      if (decision != Decision.REUSE || !banned) {
        throw new BadInput(refused.sentence());
      }
      answer.row(
          new Row.Told(
              Row.lines("not decided", refused.sentence()),
              Json.object("decided", false, "sentence", refused.sentence())));
      return Status.STOPPED;
    }
    for (Part part : parts) {
      answer.row(new DecidedRow(bench.digits(part), part.words(), true, decision.word()));
    }
    return Status.RIGHT;
  }

  private record BuyRow(
      String kind,
      int pieces,
      String size,
      String step,
      List<String> places,
      String reason,
      String amount,
      Row.Beside name)
      implements Row {
    static BuyRow of(Deciding deciding, Unit usual, Replacement line) {
      return new BuyRow(
          line.kind().key(),
          line.pieces(),
          line.sizeWords(),
          step(line.size(), usual),
          line.places().stream().map(Place::words).toList(),
          line.reason(),
          deciding.findCost(line).map(Money::text).orElse(""),
          new Row.Beside(line.named()));
    }

    private static String step(GoodsSize size, Unit usual) {
      String standard = size.isStep() ? new Amount(BigDecimal.ZERO, usual).text() : "";
      return size.findOff().map(Amount::text).orElse(standard);
    }

    static BuyRow of(Deciding deciding, Purchase thing) {
      return new BuyRow(
          thing.what().words(),
          thing.pieces(),
          "",
          "",
          List.of(),
          thing.reason(),
          deciding.findCost(thing).map(Money::text).orElse(""),
          new Row.Beside(thing.words()));
    }

    @Override
    public String text() {
      String price = amount.isEmpty() ? "no price typed" : amount;
      return Answer.cells(pieces, name.text(), size, reason, price);
    }
  }

  private static Command buy() {
    return Command.of("decide buy", "Lists what must be bought, with sizes.")
        .lists(
            (bench, call) -> {
              Deciding deciding = new Deciding(bench.job());
              Unit usual = FigureParser.usual(bench.state().units(), Dimension.LENGTH);
              return Stream.concat(
                  deciding.replacements().stream().map(line -> BuyRow.of(deciding, usual, line)),
                  deciding.purchases().stream().map(thing -> BuyRow.of(deciding, thing)));
            });
  }
}
