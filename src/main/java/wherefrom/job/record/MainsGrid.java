package wherefrom.job.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.engine.MainSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.pages.RecordGrid;
import wherefrom.job.pages.RecordLine;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** The mains beside each other: what the record says of one is a column. */
final class MainsGrid {
  private final EngineJob job;
  private final RecordLines lines;
  private final List<String> columns = new ArrayList<>();
  private final Map<String, List<RecordGrid.Cell>> rows = new LinkedHashMap<>();
  private final Map<String, String> limits = new LinkedHashMap<>();
  private final Map<String, String> sources = new LinkedHashMap<>();

  MainsGrid(EngineJob job, RecordLines lines) {
    this.job = job;
    this.lines = lines;
  }

  RecordGrid make() {
    int mains = job.layout().mains();
    for (int main = 1; main <= mains; main++) {
      columns.add("M" + main);
      for (RecordLine line : of(main)) {
        put(line, main, mains);
      }
    }
    return new RecordGrid(
        columns,
        rows.entrySet().stream()
            .map(
                row ->
                    new RecordGrid.Row(
                        row.getKey(),
                        limits.getOrDefault(row.getKey(), ""),
                        sources.getOrDefault(row.getKey(), ""),
                        row.getValue()))
            .toList());
  }

  private void put(RecordLine line, int main, int mains) {
    rows.computeIfAbsent(
            line.name(), key -> new ArrayList<>(Collections.nCopies(mains, RecordGrid.Cell.NONE)))
        .set(main - 1, new RecordGrid.Cell(line.told(), line.look()));
    line.bar().ifPresent(bar -> limits.put(line.name(), bar.words()));
    line.bar().ifPresent(bar -> sources.put(line.name(), bar.source()));
  }

  private List<RecordLine> of(int main) {
    List<RecordLine> all = new ArrayList<>();
    for (ShellHalf half : ShellHalf.values()) {
      for (PartKind kind : List.of(PartKind.MAIN_CAP, PartKind.MAIN_SHELL)) {
        MainSpot spot = new MainSpot(main, half);
        if (job.kinds().contains(kind) && Place.canLive(kind, spot)) {
          all.addAll(lines.of(new Place(kind, spot)));
        }
      }
    }
    Subject.AFeature journal = new Subject.AFeature(Feature.MAIN_JOURNAL, "M" + main);
    all.addAll(lines.of(journal));
    all.addAll(lines.of(new Subject.AFeature(Feature.MAIN_HOUSING, "M" + main)));
    all.addAll(lines.clearance(journal));
    return all;
  }
}
