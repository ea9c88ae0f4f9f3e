package wherefrom.job.ports;

import java.nio.file.Path;
import java.util.List;
import wherefrom.job.LogbookException;

/** Looks whether a job's files are sound. It only reads. */
public interface JobChecks {
  /**
   * Everything that was found, the most serious first; one finding says that all is well where
   * nothing else was found.
   *
   * @throws LogbookException when there is no job in the folder
   */
  List<CheckFinding> check(Path jobFolder);
}
