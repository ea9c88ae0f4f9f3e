package wherefrom.ui.puttogether;

import wherefrom.rules.WayOut;

/** The ways out of a stop. */
interface WaysOut {
  /** What leads out of it first; then the part is judged again. */
  void deed(WayOut deed);

  /** What could not be written is done once more. */
  void again();

  /** What stands in the way has been taken out. */
  void tookOut();

  /** What else there is: the bench, the part away, help. */
  void more();

  /** The reason for fitting on purpose is to be chosen. */
  void chooseReason();

  /** Fitted here on purpose, for the reason that is chosen. */
  void onPurpose();
}
