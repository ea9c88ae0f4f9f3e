package wherefrom.cli;

import java.io.BufferedReader;
import java.util.List;
import wherefrom.job.handling.NewPart;
import wherefrom.job.ports.Equipment;
import wherefrom.parts.TagCode;

/** Washed, mislaid, found, noted, replaced, tagged anew, taken out again. */
final class HandlingCommands {
  private static final String CODES = "CODE…|-";
  private final Equipment equipment;
  private final BufferedReader in;

  private HandlingCommands(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.in = in;
  }

  static List<Command> all(Equipment equipment, BufferedReader in) {
    HandlingCommands commands = new HandlingCommands(equipment, in);
    return List.of(
        commands.wash(),
        commands.back(),
        commands.lost(),
        commands.found(),
        commands.note(),
        commands.replace(),
        commands.reprint(),
        commands.tookOut());
  }

  private Command command(
      String name, String summary, HandlingCommand.Deed deed, Option... options) {
    return new HandlingCommand(Usage.of(name, CODES, summary, options), deed, equipment, in);
  }

  private Command wash() {
    return command(
        "wash",
        "Logs parts as off for washing, in a numbered basket.",
        (handling, item, call) ->
            handling.offForWashing(item, call.number("--basket", 0, 1, TagCode.MOST_ITEM)),
        Option.JOB,
        Option.needed("--basket", "N", "the basket's number"));
  }

  private Command back() {
    return command(
        "back",
        "Logs parts as back from washing.",
        (handling, item, call) -> handling.backFromWashing(item),
        Option.JOB);
  }

  private Command lost() {
    return command(
        "lost",
        "Logs parts that cannot be found.",
        (handling, item, call) -> handling.lost(item, call.find("--note").orElse("")),
        Option.JOB,
        Option.maybe("--note", "TEXT", "what is known of it"));
  }

  private Command found() {
    return command(
        "found",
        "Logs missing parts that have turned up.",
        (handling, item, call) -> handling.found(item),
        Option.JOB);
  }

  private Command note() {
    return command(
        "note",
        "Keeps a note on parts.",
        (handling, item, call) -> handling.note(item, call.get("--text")),
        Option.JOB,
        Option.needed("--text", "TEXT", "the note"));
  }

  private Command replace() {
    return command(
        "replace",
        "Retires parts and takes on new ones for their places; gives the new tags' digits.",
        (handling, item, call) ->
            handling.replace(
                item,
                call.get("--reason"),
                new NewPart(call.find("--size").orElse(""), call.find("--sort").orElse(""))),
        Option.JOB,
        Option.REASON,
        Option.maybe(
            "--size",
            "SIZE",
            "of shells and pistons: 0.010 in, standard, or listed, as decide buy says"),
        Option.maybe("--sort", "SORT", "where it is of another sort, such as roller"));
  }

  private Command reprint() {
    return command(
        "reprint",
        "Gives parts a new issue of their tag; older ones are retired. Then: tags --only.",
        (handling, item, call) -> handling.reissue(item, call.get("--reason")),
        Option.JOB,
        Option.REASON);
  }

  private Command tookOut() {
    return command(
        "took-out",
        "Logs fitted parts that were taken out again.",
        (handling, item, call) -> handling.tookOut(item, call.find("--reason").orElse("")),
        Option.JOB,
        Option.maybe("--reason", "TEXT", "why"));
  }
}
