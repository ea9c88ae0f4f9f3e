package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.Ring;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;

/** The card of ring filing: what each ring wants, what it is, what to file, what is done. */
final class RingCommands {
  private static final Option RING =
      Option.needed("--ring", "NAME", "top, second, upper-rail or lower-rail");
  private static final Option PER_BORE =
      Option.maybe("--per-bore", "N", "gap over bore, such as 0.004");
  private static final Option GAP = Option.maybe("--gap", "SIZE", "the gap that the sheet names");
  private static final Option CYLINDER = Option.needed("--cylinder", "N", "which bore");
  private static final Option OFF = Option.flag("--off", "takes the tick off again");

  private RingCommands() {}

  static List<Command> all() {
    return List.of(list(), want(), tick());
  }

  private record RingRow(RingGapRow row) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "cylinder", row.cylinder(),
          "ring", row.ring().id(),
          "state", row.state().id(),
          "wanted", row.wanted().map(one -> one.value().text()).orElse(""),
          "gap", row.gap().map(one -> one.value().text()).orElse(""),
          "file", row.state() == RingGapRow.State.TO_FILE ? row.toFileText() : "",
          "sentence", row.sentence());
    }

    @Override
    public String text() {
      return Answer.cells(row.words(), row.figures(), row.sentence());
    }
  }

  private static Command list() {
    return Command.of(
            "ring list", "Lists the rings of each bore: gap wanted, gap as it is, what to file.")
        .lists((bench, call) -> new RingFiling(bench.job()).rows().stream().map(RingRow::new));
  }

  private static Command want() {
    return Command.of(
            "ring want",
            "Sets the gap that a ring wants: a rule per bore, or the gap of the maker's sheet.",
            RING,
            PER_BORE,
            GAP,
            Option.maybe("--source", "TEXT", "which sheet; without it, common practice"))
        .noting("Both oil rails want one gap.")
        .tells(RingCommands::want);
  }

  private static Row want(OpenedJob bench, Call call) throws BadInput {
    Ring ring = ring(call);
    Optional<String> rule = call.find(PER_BORE);
    Optional<String> gap = call.find(GAP);
    if (rule.isPresent() == gap.isPresent()) {
      throw call.wrong("Give --per-bore or --gap, one of both.");
    }
    RingFiling filing = new RingFiling(bench.job());
    String source = call.text("--source");
    FigureOutcome came =
        gap.isPresent()
            ? filing.wantGap(ring, gap.get(), source)
            : filing.wantPerBore(ring, rule.get(), source);
    kept(came);
    return new Row.Said(
        ring.sortWords() + ": " + filing.findWanted(ring).map(one -> one.words()).orElse(""));
  }

  private static Command tick() {
    return Command.of("ring tick", "Ticks a ring as done.", CYLINDER, RING, OFF)
        .noting("A ring that is still too narrow is not ticked.")
        .tells(RingCommands::tick);
  }

  private static Row tick(OpenedJob bench, Call call) throws BadInput {
    Ring ring = ring(call);
    String where = "B" + call.get(CYLINDER);
    RingFiling filing = new RingFiling(bench.job());
    if (call.has(OFF)) {
      filing.untick(where, ring);
    } else {
      kept(filing.tick(where, ring));
    }
    return new RingRow(
        filing.find(where, ring).orElseThrow(() -> new BadInput("No gap is wanted of this ring.")));
  }

  private static Ring ring(Call call) throws BadInput {
    return Ring.find(call.get(RING))
        .orElseThrow(() -> call.wrong("Use one of: top, second, upper-rail, lower-rail."));
  }

  private static void kept(FigureOutcome came) throws BadInput {
    if (came instanceof FigureOutcome.Refused refused) {
      throw new BadInput(refused.sentence());
    }
  }
}
