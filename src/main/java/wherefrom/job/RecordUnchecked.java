package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Look;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** What was not checked: it stands first in the record. */
final class RecordUnchecked {
  private final OpenJob job;

  RecordUnchecked(OpenJob job) {
    this.job = job;
  }

  RecordSection section() {
    List<RecordSection.Row> rows = new ArrayList<>();
    EngineJob state = job.state();
    for (StandingRule rule : state.rules().openChecks()) {
      rows.add(
          row(
              rule.consequence().rule() + ": " + rule.consequence().sentence(),
              String.join(", then ", rule.consequence().reasons()),
              rule.consequence().source()));
    }
    for (PartRecord part : state.parts()) {
      boolean fitted = part.where() == Whereabouts.FITTED;
      if (fitted
          && !part.part().fresh()
          && state.worstLook(part.part().item()) == Look.NOT_LOOKED) {
        rows.add(row("Fitted without any look: " + part.part().words(), "", ""));
      }
    }
    for (Place place : new StillMissing(job).places()) {
      rows.add(row("Place still open: " + place.words(), "", ""));
    }
    for (Place place : state.places()) {
      state
          .findExcuse(place)
          .ifPresent(reason -> rows.add(row("Left empty: " + place.words(), reason, "")));
    }
    return new RecordSection(
        "NOT CHECKED", List.of("what", "because", "source"), rows, "Nothing is left open.");
  }

  private static RecordSection.Row row(String... cells) {
    return new RecordSection.Row(List.of(cells), true);
  }
}
