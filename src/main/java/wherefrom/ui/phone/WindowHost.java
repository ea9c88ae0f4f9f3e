package wherefrom.ui.phone;

import java.nio.file.Path;
import javafx.application.Platform;
import wherefrom.job.By;
import wherefrom.job.OpenJob;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.PhonePictures;
import wherefrom.job.ports.Services;
import wherefrom.job.settings.Settings;
import wherefrom.job.shelf.Shelf;
import wherefrom.ui.app.ScreenContext;

/**
 * The job that is open in the window, for phones: each gets a bench beside the window's. What it
 * writes reaches the window as from any other bench.
 */
final class WindowHost implements PhoneHost {
  private static final int FIRST_BENCH = 2;

  private final OpenJob job;
  private final String name;
  private final Shelf shelf;
  private final Settings settings;
  private final PhonePictures pictures;
  private final Runnable news;

  /**
   * @param news is run on the window's thread when phones have come or gone
   */
  WindowHost(ScreenContext context, Runnable news) {
    Services services = context.services();
    this.job = context.getJob();
    this.name = job.state().name();
    this.shelf = context.shelf();
    this.settings = context.settings();
    this.pictures =
        new PhonePictures(services.reader(), services.pictures()::load, services.photos());
    this.news = news;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Path folder() {
    return job.folder();
  }

  @Override
  public PhoneBench bench(String who) {
    return new PhoneBench(job.beside(new By(FIRST_BENCH, who)), shelf, settings::outOrder);
  }

  @Override
  public PhonePictures pictures() {
    return pictures;
  }

  @Override
  public void changed() {
    Platform.runLater(news);
  }
}
