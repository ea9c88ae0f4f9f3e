package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveReader;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/**
 * A live scan in a process of its own; prints the memory in use in the midst of it and at its end.
 */
final class LiveMemoryRun {
  private static final int HALF = 80;

  private LiveMemoryRun() {}

  public static void main(String[] arguments) {
    List<TagCode> issued = GreaseFrames.issued(7_654_321);
    List<GreyImage> frames = new ArrayList<>();
    for (Family family : List.of(Family.OIL, Family.PAINT, Family.MIXED)) {
      TagCode code = issued.get(family.ordinal());
      GreaseScene scene = GreaseFrames.scene(family, 6, 1, 720, code);
      for (int count = 0; count < 5; count++) {
        frames.add(scene.next(code.digits()).image());
      }
    }
    LiveReader live = new PipelineReader().live(issued);
    long first = used(live, frames);
    long second = used(live, frames);
    System.out.println(first + " " + second);
  }

  private static long used(LiveReader live, List<GreyImage> frames) {
    for (int count = 0; count < HALF; count++) {
      live.accept(frames.get(count % frames.size()));
    }
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
