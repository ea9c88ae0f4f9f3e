package wherefrom.ui.app;

import java.util.function.Consumer;
import wherefrom.job.OpenJob;

/**
 * What comes of slow work on the open job. It is taken while that job lies on the bench; where the
 * job was put away meanwhile, nothing is done with it, neither to another job nor to none.
 */
public final class OnThisJob {
  private OnThisJob() {}

  /**
   * To be asked for when the work begins.
   *
   * @param done takes what came
   * @param putAway says what is lost where the job was put away
   */
  public static <T> Consumer<T> take(ScreenContext context, Consumer<T> done, String putAway) {
    OpenJob job = context.getJob();
    return came -> {
      if (context.job().filter(job::equals).isPresent()) {
        done.accept(came);
      } else {
        context.say(putAway);
      }
    };
  }
}
