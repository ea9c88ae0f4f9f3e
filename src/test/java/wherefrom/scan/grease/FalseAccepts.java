package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** Counts what is read on frames on which no issued tag is. */
final class FalseAccepts {
  private final int engine = 4_711_003;
  private final List<TagCode> issued = GreaseFrames.issued(engine);
  private final PipelineReader reader = new PipelineReader();
  private final Map<String, int[]> kinds = new TreeMap<>();
  private int wrong;
  private int frames;

  /** Shows each of the scenes with these numbers in so many frames, still and live. */
  void show(long from, int scenes, int framesEach) {
    for (long number = from; number < from + scenes; number++) {
      ForeignScenes.Foreign foreign = ForeignScenes.of(number, engine, issued);
      LiveReader live = reader.live(issued);
      for (int count = 0; count < framesEach; count++) {
        GreyImage image = foreign.scene().next(foreign.text()).image();
        frames++;
        kinds.computeIfAbsent(foreign.kind(), made -> new int[3])[0]++;
        List<Sighting> sightings = new ArrayList<>();
        if (count == 0) {
          sightings.addAll(reader.read(image, issued).sightings());
        }
        sightings.addAll(sightings(live.accept(image)));
        sightings.forEach(sighting -> count(foreign, sighting));
      }
    }
  }

  private static List<Sighting> sightings(LiveAnswer answer) {
    if (answer instanceof LiveAnswer.Read read) {
      return List.of(read.sighting());
    }
    return answer instanceof LiveAnswer.Several several ? several.sightings() : List.of();
  }

  private void count(ForeignScenes.Foreign foreign, Sighting sighting) {
    boolean right =
        sighting.text().equals(foreign.text()) && sighting.basis() != Sighting.Basis.ISSUED;
    kinds.computeIfAbsent(foreign.kind(), made -> new int[3])[right ? 1 : 2]++;
    wrong += right ? 0 : 1;
  }

  int wrong() {
    return wrong;
  }

  int frames() {
    return frames;
  }

  /** Frames, rightly decoded and wrongly read, by kind. */
  String report() {
    StringBuilder report = new StringBuilder();
    kinds.forEach(
        (kind, tally) ->
            report.append(
                String.format(
                    Locale.ROOT,
                    "%-15s frames %6d  rightly decoded %6d  wrong %d%n",
                    kind,
                    tally[0],
                    tally[1],
                    tally[2])));
    return report.toString();
  }
}
