package wherefrom.ui.takeapart;

import java.util.List;
import java.util.function.IntFunction;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.parts.Part;
import wherefrom.text.Words;

/** What is noted of a part as it comes out; every answer names the part, or says what is wrong. */
final class PartRemarks {
  private final OpenJob job;

  PartRemarks(OpenJob job) {
    this.job = job;
  }

  private String name(Part part) {
    return PartName.of(job.state().layout(), part).words();
  }

  String note(Part part, String text) {
    return said(
        part,
        item -> new Handling(job).note(item, text),
        "Noted on " + name(part) + ": " + text + ".");
  }

  /** How many pieces hang on its wire, under one tag. */
  String pieces(Part part, String typed) {
    int count = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    return said(
        part,
        item -> new Handling(job).pieces(item, count),
        count + " pieces: " + name(part) + ".");
  }

  private static String said(Part part, IntFunction<HandlingOutcome> deed, String done) {
    return deed.apply(part.item()) instanceof HandlingOutcome.Refused refused
        ? refused.sentence()
        : done;
  }

  /** The quick tests that a part can be found suspect by, in the order of doing them. */
  List<Check> checks(Part part) {
    return new Inspecting(job)
        .cards(Subject.ofPart(part.item())).stream().map(CheckCard::check).toList();
  }

  /** It is suspect by this test. */
  String suspect(Part part, Check check) {
    Inspecting.Answer came =
        new Inspecting(job)
            .answer(
                Subject.ofPart(part.item()), check.key(), Look.SUSPECT, Inspecting.AS_IT_CAME_OUT);
    return came instanceof Inspecting.Answer.Refused refused
        ? refused.sentence()
        : "Suspect: " + name(part) + ". " + check.suspect();
  }

  /** What is wrong where it is suspect by this test, as a key says it: no question. */
  static String fault(Check check) {
    return Words.withoutStop(check.suspect());
  }
}
