package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.job.inspect.Castings;

/** Block and heads: their tests, what becomes of each. */
final class CastingCommands {
  private CastingCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of("casting list", "Lists block and heads: tests to do, worst answer, decision.")
            .noting("Tests: \"inspect block@\", \"inspect head@left\", \"inspect chamber@B3\".")
            .lists((bench, call) -> new Castings(bench.job()).list().stream().map(CastingRow::new)),
        Command.of(
                "casting decide",
                "Keeps what becomes of a casting.",
                Option.needed("--of", "FEATURE", "which, such as block@ or head@left"),
                Option.needed("--as", "DECISION", "reuse, machine or replace"),
                Option.maybe("--reason", "TEXT", "why"))
            .noting("A head that is a big part of the job has one decision for both.")
            .tells(CastingCommands::decide));
  }

  private record CastingRow(Castings.Casting one) implements Row {
    private String decision() {
      return one.decision().map(Names::of).orElse("");
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "subject", one.subject().key(),
          "words", one.words(),
          "tests", one.cards().size(),
          "open", one.countOpen(),
          "worst", Names.of(one.worst()),
          "photographs", one.photographs(),
          "decision", decision(),
          "reason", one.reason());
    }

    @Override
    public String text() {
      return Answer.cells(
          one.subject().key(),
          one.countOpen() + " of " + one.cards().size() + " to do",
          one.worst().word(),
          one.decided(),
          one.reason());
    }
  }

  private static Row decide(OpenedJob bench, Call call) throws BadInput {
    Castings castings = new Castings(bench.job());
    String subject = call.get("--of");
    Decision decision = Names.find(Decision.class, "decision", call.get("--as"));
    Optional<String> fault = castings.decide(subject, decision, call.text("--reason"));
    if (fault.isPresent()) {
      throw new BadInput(
          fault.get()
              + " Use one of: "
              + String.join(", ", castings.list().stream().map(one -> one.subject().key()).toList())
              + ".");
    }
    return new CastingRow(castings.find(subject).orElseThrow());
  }
}
