package wherefrom.phone;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import wherefrom.job.phone.JobTurn;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.PhonePictures;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.logbook.PhotoFiles;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.picture.PictureFiles;
import wherefrom.ui.sample.SampleJob;

/** A sample job for phones, with the real reader of tags. */
final class BenchHost implements PhoneHost {
  private static final PipelineReader READER = new PipelineReader();

  final SampleJob sample;
  private final Path folder;

  /** What is run before each deed, so that a test can hold one up. */
  volatile Callable<?> before = () -> "";

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
  public PhoneBench bench() {
    return new PhoneBench(sample.job, SampleJob.NAMES, () -> OutOrder.CYLINDER);
  }

  @Override
  public JobTurn turn() {
    return new JobTurn() {
      @Override
      public <T> T take(Callable<T> deed) throws Exception {
        before.call();
        synchronized (sample) {
          return deed.call();
        }
      }
    };
  }

  @Override
  public PhonePictures pictures() {
    return new PhonePictures(READER, new PictureFiles(), new PhotoFiles());
  }

  @Override
  public void changed() {}
}
