package wherefrom.job.phone;

import java.nio.file.Path;

/** The job that phones join, as the window has it open; safe for several threads. */
public interface PhoneHost {
  /** The job's name. */
  String name();

  /** Where its photographs lie. */
  Path folder();

  /**
   * A bench for a phone that joins, its own until it is closed.
   *
   * @param who the person's name as it was typed; may be empty
   * @throws wherefrom.job.LogbookException when there can be none
   */
  PhoneBench bench(String who);

  PhonePictures pictures();

  /** A phone has joined or gone, or the key or the door is another; called on any thread. */
  void changed();
}
