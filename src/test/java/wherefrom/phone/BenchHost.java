package wherefrom.phone;

import java.nio.file.Path;
import java.util.Collection;
import wherefrom.job.By;
import wherefrom.job.image.GreyImage;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.PhonePictures;
import wherefrom.job.photos.Photos;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.TagReader;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.picture.PictureFiles;
import wherefrom.ui.sample.SampleJob;

/** A sample job for phones, with the real reader of tags. */
final class BenchHost implements PhoneHost {
  private static final PipelineReader READER = new PipelineReader();

  final SampleJob sample;
  private final Path folder;

  /** What is run before a picture is read, so that a test can hold one up. */
  volatile Runnable before = () -> {};

  /** Where photographs are kept. */
  volatile Photos photos = new PhotoFiles();

  /** What is run before a phone gets its bench; where it throws, there is none. */
  volatile Runnable joining = () -> {};

  /**
   * @param folder where photographs are kept
   */
  BenchHost(SampleJob sample, Path folder) {
    this.sample = sample;
    this.folder = folder;
  }

  @Override
  public String name() {
    return sample.job.state().name();
  }

  @Override
  public Path folder() {
    return folder;
  }

  @Override
  public PhoneBench bench(String who) {
    joining.run();
    return new PhoneBench(
        sample.job.beside(new By(2, who)), SampleJob.NAMES, () -> OutOrder.CYLINDER);
  }

  @Override
  public PhonePictures pictures() {
    return new PhonePictures(new Held(), new PictureFiles()::load, photos);
  }

  @Override
  public void changed() {}

  private final class Held implements TagReader {
    @Override
    public Reading read(GreyImage picture, Collection<TagCode> issued) {
      before.run();
      return READER.read(picture, issued);
    }

    @Override
    public LiveReader live(Collection<TagCode> issued) {
      return READER.live(issued);
    }
  }
}
