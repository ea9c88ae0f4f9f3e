package wherefrom.job.phone;

import java.nio.file.Path;

/** The job that phones join, as the window or a command has it open. */
public interface PhoneHost {
  /** The job's name. */
  String name();

  /** Where its photographs lie. */
  Path folder();

  /** A bench for a phone that joins; to be made in the job's turn. */
  PhoneBench bench();

  JobTurn turn();

  PhonePictures pictures();

  /** A phone has joined or gone, or the key or the door is another; called on any thread. */
  void changed();
}
