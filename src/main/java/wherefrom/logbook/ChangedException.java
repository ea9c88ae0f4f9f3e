package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Path;

/** What is on disk is not what was written any more. The message is a sentence for the person. */
final class ChangedException extends IOException {
  private static final String NOT_KEPT = "The step was not kept: ";

  private ChangedException(String why, String remedy) {
    super(NOT_KEPT + why + ". " + remedy);
  }

  static ChangedException gone(Path folder) {
    return new ChangedException(
        "the job's folder " + folder + " is not there any more",
        "Put it back, then do the step again.");
  }

  static ChangedException held() {
    return new ChangedException(
        "another program has this job open now", "Close it there, then open the job here again.");
  }

  /** While the line was being written: whether it is there after all is for the caller to find. */
  static ChangedException meanwhile() {
    return new ChangedException(
        "its logbook was exchanged at that moment",
        "Check whether it is there. If not, do it again.");
  }

  /**
   * The files hold something else than what was kept.
   *
   * @param kept how many entries were kept
   */
  static ChangedException other(FolderScan now, long kept) {
    if (now.trouble().isPresent()) {
      Trouble trouble = now.trouble().get();
      return new ChangedException(
          "something else changed " + trouble.file() + ", line " + trouble.line(), GO_BACK);
    }
    long found = now.entries().size();
    if (found > kept) {
      return new ChangedException(
          "another program has added steps to this job", "Close the job and open it again.");
    }
    if (found < kept) {
      return new ChangedException(
          "something else took " + (kept - found) + " of its steps off the disk", GO_BACK);
    }
    return new ChangedException("something else exchanged its logbook for another", GO_BACK);
  }

  private static final String GO_BACK =
      "Keep the folder as it is. Go on with the copy on the USB drive.";
}
