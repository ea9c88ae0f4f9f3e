package wherefrom.ui.phone;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import javafx.application.Platform;
import wherefrom.job.OpenJob;
import wherefrom.job.phone.JobTurn;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.PhonePictures;
import wherefrom.job.ports.Services;
import wherefrom.ui.app.ScreenContext;

/** The job that is open in the window, for phones. */
final class WindowHost implements PhoneHost {
  private final ScreenContext context;
  private final OpenJob job;
  private final String name;
  private final Path folder;
  private final WindowTurn turn = new WindowTurn(Platform::runLater);
  private final Runnable news;

  /**
   * @param news is run on the window's thread when phones have come or gone
   */
  WindowHost(ScreenContext context, Runnable news) {
    this.context = context;
    this.job = context.getJob();
    this.name = job.state().name();
    this.folder = job.folder();
    this.news = news;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Path folder() {
    return folder;
  }

  @Override
  public PhoneBench bench() {
    return new PhoneBench(job, context.shelf(), () -> context.settings().outOrder());
  }

  @Override
  public JobTurn turn() {
    return new JobTurn() {
      @Override
      public <T> T take(Callable<T> deed) throws Exception {
        return turn.take(() -> seen(deed));
      }
    };
  }

  /** What a phone has done is seen in the window at once. */
  private <T> T seen(Callable<T> deed) throws Exception {
    long before = job.sequence();
    T done = deed.call();
    if (job.sequence() != before) {
      context.navigator().changed();
    }
    return done;
  }

  @Override
  public PhonePictures pictures() {
    Services services = context.services();
    return new PhonePictures(services.reader(), services.pictures(), services.photos());
  }

  @Override
  public void changed() {
    Platform.runLater(news);
  }
}
