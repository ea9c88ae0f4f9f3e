package wherefrom.phone;

import java.util.Collection;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.TagReader;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** The real reader, with a watch on it. */
final class TimedReader implements TagReader {
  private final PipelineReader real = new PipelineReader();
  private volatile long longest;

  /** The longest that reading a picture took, in nanoseconds. */
  long longest() {
    return longest;
  }

  @Override
  public Reading read(GreyImage picture, Collection<TagCode> issued) {
    long from = System.nanoTime();
    Reading reading = real.read(picture, issued);
    longest = Math.max(longest, System.nanoTime() - from);
    return reading;
  }

  @Override
  public List<Sighting> listForeign(GreyImage picture) {
    return real.listForeign(picture);
  }

  @Override
  public LiveReader live(Collection<TagCode> issued) {
    return real.live(issued);
  }
}
