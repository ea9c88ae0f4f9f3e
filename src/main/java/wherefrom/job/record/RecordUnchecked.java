package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wherefrom.inspection.Look;
import wherefrom.job.CheckWords;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.Untagged;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/** What was not checked: it stands first in the record. */
final class RecordUnchecked {
  private final OpenJob job;

  RecordUnchecked(OpenJob job) {
    this.job = job;
  }

  RecordSection section() {
    List<RecordSection.Row> rows = new ArrayList<>();
    EngineJob state = job.state();
    for (ToFit.FittedBut one : new ToFit(job).fittedBut()) {
      String what = state.state(one.place()).words() + ": " + one.place().words();
      rows.add(row(what, one.sentence(), ""));
    }
    CheckWords checks = new CheckWords(state);
    for (StandingRule rule : state.rules().openChecks()) {
      rows.add(
          row(
              checks.stillOpen(rule.consequence(), job.days()),
              String.join(", then ", rule.consequence().reasons()),
              rule.consequence().source()));
    }
    for (String open : TorqueRecord.open(state)) {
      rows.add(row("Torque: " + open, "each bolt wants its tick and a second person", ""));
    }
    for (Place place : Untagged.places(state)) {
      rows.add(row("Fitted without a tag: " + place.words(), Untagged.SENTENCE, ""));
    }
    grouped("Fitted without inspection", unlooked(state)).forEach(rows::add);
    grouped("Places to fit", new ToFit(job).places()).forEach(rows::add);
    for (Place place : state.places()) {
      state
          .findExcuse(place)
          .ifPresent(reason -> rows.add(row("Left empty: " + place.words(), reason, "")));
      state
          .findSeated(place)
          .flatMap(part -> whyIn(state, part.item()))
          .ifPresent(reason -> rows.add(row("Left in: " + place.words(), reason, "")));
    }
    return new RecordSection(
        RecordTable.NOT_CHECKED,
        List.of("what", RecordSection.BECAUSE, "source"),
        rows,
        "Nothing is left open.");
  }

  /** Why a part sits where it sits although something stood against it: what was said last. */
  private static Optional<String> whyIn(EngineJob state, int item) {
    return state
        .findLeftIn(item)
        .or(
            () ->
                state.onPurpose().stream()
                    .filter(fit -> fit.item() == item)
                    .map(PartFitted::onPurpose)
                    .findFirst());
  }

  private static List<Place> unlooked(EngineJob state) {
    return state.parts().stream()
        .filter(part -> part.where() == Whereabouts.FITTED && !part.part().fresh())
        .filter(part -> state.bench().worst(part.part().item()).look() == Look.NOT_LOOKED)
        .map(part -> part.part().home())
        .toList();
  }

  /** One row a kind: a finished bank is one thing to see, not sixteen. */
  private static List<RecordSection.Row> grouped(String what, List<Place> places) {
    Map<PartKind, List<Place>> byKind = new TreeMap<>();
    places.forEach(at -> byKind.computeIfAbsent(at.kind(), kind -> new ArrayList<>()).add(at));
    return byKind.entrySet().stream()
        .map(
            one ->
                row(
                    what
                        + ": "
                        + Words.count(
                            one.getValue().size(), one.getKey().word(), one.getKey().plural()),
                    one.getValue().stream().map(Place::figures).collect(Collectors.joining(", ")),
                    ""))
        .toList();
  }

  private static RecordSection.Row row(String... cells) {
    return new RecordSection.Row(List.of(cells), true);
  }
}
