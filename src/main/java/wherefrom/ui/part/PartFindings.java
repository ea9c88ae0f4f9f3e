package wherefrom.ui.part;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearances;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.rules.before.Symptom;
import wherefrom.workings.ResultValue;

/** What was looked at and measured on a part. */
final class PartFindings {
  private final OpenJob job;
  private final Subject subject;

  PartFindings(OpenJob job, int item) {
    this.job = job;
    this.subject = Subject.ofPart(item);
  }

  /** The looks, then the readings, then the clearances that it is part of. */
  List<PartModel.Line> lines() {
    List<PartModel.Line> lines = new ArrayList<>();
    for (Symptom sign : new BeforeTeardown(job).hints(subject)) {
      lines.add(new PartModel.Line("Before teardown", sign.sentence()));
    }
    for (CheckCard card : new Inspecting(job).cards(subject)) {
      if (card.look() != Look.NOT_LOOKED) {
        String note = card.note().isEmpty() ? "" : " (" + card.note() + ")";
        lines.add(new PartModel.Line(card.check().title(), card.look().word() + note));
      }
    }
    for (MeasuredResult result : job.state().measures().listResults(subject)) {
      lines.add(new PartModel.Line(result.plan().title(), words(result)));
    }
    new OilClearances(job.state())
        .find(subject)
        .filter(bearing -> bearing.sequence() > 0)
        .ifPresent(
            bearing ->
                lines.add(
                    new PartModel.Line("Oil clearance, " + bearing.words(), bearing.sentence())));
    new PairClearances(job.state())
        .find(subject).stream()
            .filter(pair -> pair.sequence() > 0)
            .map(
                pair ->
                    new PartModel.Line(pair.pair().title() + ", " + pair.words(), pair.sentence()))
            .forEach(lines::add);
    return lines;
  }

  /** The readings that are whole and have a limit, held against it. */
  List<Judgement> judgements() {
    return job.state().measures().listResults(subject).stream()
        .flatMap(result -> result.judgements().stream())
        .toList();
  }

  private static String words(MeasuredResult result) {
    if (!result.isWhole() && result.judgements().isEmpty()) {
      return result.samples().size()
          + " of "
          + result.plan().stations().size()
          + " readings taken so far.";
    }
    List<String> words = new ArrayList<>();
    result.judgements().stream().map(Judgement::sentence).forEach(words::add);
    if (words.isEmpty()) {
      result.findSize().map(ResultValue::text).ifPresent(words::add);
    }
    return words.isEmpty() ? "measured" : String.join(" ", words);
  }
}
