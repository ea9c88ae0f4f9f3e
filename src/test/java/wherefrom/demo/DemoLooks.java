package wherefrom.demo;

import java.util.List;
import java.util.Map;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.inspect.Inspecting;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** What somebody saw on the parts of the demo. Invented. */
final class DemoLooks {
  /** Nobody has looked at these yet. */
  private static final List<String> UNSEEN =
      List.of("rocker@7IN", "rocker@7EX", "rocker@8IN", "rocker@8EX", "pushrod@8EX");

  /** Where something else than a pass was seen: place and check, answer, note. */
  private static final Map<String, Found> FOUND =
      Map.of(
          "pushrod@3EX pushrod-roll", new Found(Look.SUSPECT, "hops"),
          "pushrod@5IN pushrod-roll", new Found(Look.SUSPECT, "light flickers under it"),
          "rocker@3EX rocker-faces", new Found(Look.SUSPECT, "a step in the cup"),
          "lifter@6EX lifter-foot", new Found(Look.FAIL, "hollow: a coin shows light"),
          "lifter@6IN lifter-foot", new Found(Look.SUSPECT, "pits, see the photograph"),
          "spring@4EX spring-height", new Found(Look.SUSPECT, "a little short in the row"));

  private record Found(Look look, String note) {}

  private final OpenJob job;
  private final Inspecting inspecting;

  DemoLooks(OpenJob job) {
    this.job = job;
    this.inspecting = new Inspecting(job);
  }

  /** Before anything is washed. */
  void dirty() {
    feature(Feature.OIL, "", "oil-look", Look.SUSPECT, "black, a thin gray film on the magnet");
    parts(PartKind.ROD_SHELL);
    parts(PartKind.MAIN_SHELL);
    feature(Feature.TIMING, "", "gear-teeth", Look.PASS, "steel, all whole");
  }

  /** When the parts are clean. */
  void clean() {
    for (PartKind kind :
        List.of(
            PartKind.PUSHROD,
            PartKind.ROCKER,
            PartKind.LIFTER,
            PartKind.SPRING,
            PartKind.ROD_CAP,
            PartKind.MAIN_CAP)) {
      parts(kind);
    }
    for (String at : Feature.LOBE.where(job.state().layout())) {
      boolean worn = at.equals("6EX");
      feature(
          Feature.LOBE,
          at,
          "lobe-look",
          worn ? Look.FAIL : Look.PASS,
          worn ? "nose worn flat, edge broken" : "");
    }
    for (String at : Feature.ROD_JOURNAL.where(job.state().layout())) {
      feature(Feature.ROD_JOURNAL, at, "rod-journal-look", Look.PASS, "");
    }
    for (String at : Feature.MAIN_JOURNAL.where(job.state().layout())) {
      feature(Feature.MAIN_JOURNAL, at, "main-journal-look", Look.PASS, "");
    }
    feature(Feature.HEAD, "left", "head-flat", Look.SUSPECT, "a leak track by cylinder 3");
  }

  private void parts(PartKind kind) {
    for (Place place : job.state().places()) {
      if (place.kind() == kind && !UNSEEN.contains(place.key())) {
        Part part = job.state().findOwner(place).orElseThrow();
        checks(kind).forEach(check -> part(part, check.key()));
      }
    }
  }

  private List<Check> checks(PartKind kind) {
    return kind == PartKind.LIFTER
        ? Checks.ofLifter(job.state().layout().lifters())
        : Checks.of(kind);
  }

  private void part(Part part, String check) {
    Found found = FOUND.getOrDefault(part.home().key() + " " + check, new Found(Look.PASS, ""));
    keep(Subject.ofPart(part.item()), check, found.look(), found.note());
  }

  private void feature(Feature feature, String where, String check, Look look, String note) {
    keep(new Subject.AFeature(feature, where), check, look, note);
  }

  private void keep(Subject subject, String check, Look look, String note) {
    if (inspecting.answer(subject, check, look, note)
        instanceof Inspecting.Answer.Refused refused) {
      throw new IllegalStateException(refused.sentence());
    }
  }
}
