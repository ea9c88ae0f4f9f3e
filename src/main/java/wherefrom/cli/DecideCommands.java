package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Proposal;
import wherefrom.job.money.Purchase;
import wherefrom.job.money.Replacement;
import wherefrom.job.ports.Equipment;
import wherefrom.job.tags.Found;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Money;

/** Reuse, machine or replace: proposed, decided, and what must be bought. */
final class DecideCommands {
  private static final String CODES = "CODE…|-";
  private static final Option AS = Option.needed("--as", "DECISION", "reuse, machine or replace");

  private final Equipment equipment;
  private final Codes codes;

  private DecideCommands(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.codes = Codes.single(in);
  }

  /** The one-word command stands last: a call is given to the first whose words it begins with. */
  static List<Command> all(Equipment equipment, BufferedReader in) {
    DecideCommands commands = new DecideCommands(equipment, in);
    return List.of(
        commands.command(
            Usage.of(
                "decide list",
                "",
                "Lists the parts that wait for a decision.",
                Option.JOB,
                Option.flag("--all", "every used part without a decision, held up or not")),
            commands::list),
        commands.command(
            Usage.of(
                    "decide ask",
                    "every|doubtful",
                    "Asks for a decision on every used part before it is fitted, or only on those"
                        + " that something speaks against.",
                    Option.JOB)
                .noting("Identity is checked always; at first only doubtful parts wait."),
            commands::ask),
        commands.command(
            Usage.of(
                "decide propose",
                CODES,
                "Says what the rules propose for parts, with the reasons.",
                Option.JOB),
            commands::propose),
        commands.command(
            Usage.of(
                "decide set",
                "KIND",
                "Decides about every used part of a kind at once.",
                Option.JOB,
                AS,
                Option.REASON),
            commands::set),
        commands.command(
            Usage.of("decide buy", "", "Lists what must be bought, with sizes.", Option.JOB),
            commands::buy),
        commands.command(
            Usage.of("decide", CODES, "Decides about parts.", Option.JOB, AS, Option.REASON)
                .noting("Exit status 1 where a rule forbids the reuse; nothing is decided then."),
            commands::decide));
  }

  private Command command(Usage usage, JobCommand.Deed deed) {
    return new JobCommand(usage, deed, equipment);
  }

  private Status list(Bench bench, Call call, Answer answer) {
    Deciding deciding = new Deciding(bench.job());
    List<Part> parts =
        call.find("--all").isPresent() ? deciding.listWithoutDecision() : deciding.listUndecided();
    for (Part part : parts) {
      Proposal proposal = deciding.propose(part.item());
      row(bench, answer, part, proposal);
    }
    return Status.RIGHT;
  }

  private Status ask(Bench bench, Call call, Answer answer) throws BadInput {
    List<String> operands = call.operands();
    if (!List.of(List.of("every"), List.of("doubtful")).contains(operands)) {
      throw call.wrong("Give every or doubtful.");
    }
    boolean every = operands.equals(List.of("every"));
    Deciding deciding = new Deciding(bench.job());
    deciding.askEveryPart(every);
    int waiting = deciding.listUndecided().size();
    answer.row(
        Fields.of("everyPart", every).and("waiting", waiting),
        (every
                ? "Every used part wants a decision before it is fitted. "
                : "Only parts that something speaks against want a decision. ")
            + "Waiting now: "
            + waiting
            + ".");
    return Status.RIGHT;
  }

  private static void row(Bench bench, Answer answer, Part part, Proposal proposal) {
    String digits = bench.book().of(part).digits();
    String proposed = proposal.decision().map(Decision::word).orElse("no proposal");
    List<String> lines = new ArrayList<>();
    List<Object> reasons = new ArrayList<>();
    lines.add(Answer.cells(digits, part.words(), proposed));
    for (Proposal.Reason reason : proposal.reasons()) {
      lines.add(Answer.cells("", reason.sentence(), reason.source()));
      reasons.add(Fields.of("sentence", reason.sentence()).and("source", reason.source()).all());
    }
    answer.row(
        Fields.of("code", digits)
            .and("part", part.words())
            .and("proposed", proposed)
            .and("reasons", reasons),
        lines.toArray(String[]::new));
  }

  private Status propose(Bench bench, Call call, Answer answer) throws BadInput, IOException {
    return codes.each(
        call,
        answer,
        code -> {
          Part part = part(bench, code.get(0));
          row(bench, answer, part, new Deciding(bench.job()).propose(part.item()));
          return Status.RIGHT;
        });
  }

  private static Part part(Bench bench, String code) throws BadInput {
    if (bench.find(code) instanceof Found.APart part) {
      return part.part().part();
    }
    throw new BadInput(code + " is no part of this job: " + Meaning.sentence(bench.find(code)));
  }

  private static Decision decision(Call call) throws BadInput {
    return Names.find(Decision.class, "decision", call.get("--as"));
  }

  private Status decide(Bench bench, Call call, Answer answer) throws BadInput, IOException {
    Decision decision = decision(call);
    String reason = call.get("--reason");
    return codes.each(
        call,
        answer,
        code -> decide(bench, answer, List.of(part(bench, code.get(0))), decision, reason));
  }

  private Status set(Bench bench, Call call, Answer answer) throws BadInput {
    if (call.operands().size() != 1) {
      throw call.wrong("Give one kind of part.");
    }
    PartKind kind = Names.find(PartKind.class, "kind of part", call.operands().get(0));
    List<Part> parts =
        bench.job().state().parts().stream()
            .filter(record -> record.where() != Whereabouts.RETIRED)
            .map(record -> record.part())
            .filter(part -> part.kind() == kind && !part.fresh())
            .toList();
    if (parts.isEmpty()) {
      throw new BadInput("There are no used " + kind.plural() + " in this job.");
    }
    return decide(bench, answer, parts, decision(call), call.get("--reason"));
  }

  private static Status decide(
      Bench bench, Answer answer, List<Part> parts, Decision decision, String reason)
      throws BadInput {
    List<Integer> items = parts.stream().map(Part::item).toList();
    Deciding.Answer decided = new Deciding(bench.job()).decide(items, decision, reason);
    if (decided instanceof Deciding.Answer.Refused refused) {
      boolean banned =
          items.stream().anyMatch(item -> bench.job().state().findBan(item).isPresent());
      if (decision != Decision.REUSE || !banned) {
        throw new BadInput(refused.sentence());
      }
      answer.row(
          Fields.of("decided", false).and("sentence", refused.sentence()),
          "not decided",
          refused.sentence());
      return Status.STOPPED;
    }
    for (Part part : parts) {
      String digits = bench.book().of(part).digits();
      answer.row(
          Fields.of("code", digits)
              .and("part", part.words())
              .and("decided", true)
              .and("decision", decision.word()),
          Answer.cells(digits, part.words(), decision.word()));
    }
    return Status.RIGHT;
  }

  private Status buy(Bench bench, Call call, Answer answer) {
    Deciding deciding = new Deciding(bench.job());
    for (Replacement line : deciding.replacements()) {
      List<String> places = line.places().stream().map(place -> place.words()).toList();
      row(
          answer,
          Fields.of("kind", line.kind().key())
              .and("pieces", line.pieces())
              .and("size", line.size())
              .and("step", line.step().map(Amount::text).orElse(""))
              .and("places", places)
              .and("reason", line.reason()),
          deciding.findCost(line),
          Integer.toString(line.pieces()),
          line.kind().plural(),
          line.size(),
          line.reason());
    }
    for (Purchase thing : deciding.purchases()) {
      row(
          answer,
          Fields.of("kind", thing.what())
              .and("pieces", thing.pieces())
              .and("size", "")
              .and("step", "")
              .and("places", List.of())
              .and("reason", thing.reason()),
          deciding.findCost(thing),
          Integer.toString(thing.pieces()),
          thing.what(),
          "",
          thing.reason());
    }
    return Status.RIGHT;
  }

  private static void row(Answer answer, Fields fields, Optional<Money> cost, String... cells) {
    String amount = cost.map(Money::text).orElse("");
    List<String> all = new ArrayList<>(List.of(cells));
    all.add(amount.isEmpty() ? "no price typed" : amount);
    answer.row(fields.and("amount", amount), Answer.cells(all.toArray(String[]::new)));
  }
}
