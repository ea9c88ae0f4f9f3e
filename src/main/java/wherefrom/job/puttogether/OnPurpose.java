package wherefrom.job.puttogether;

import wherefrom.text.UsualWords;

/** The reasons for fitting a part against a stop. */
public final class OnPurpose {
  public static final UsualWords REASONS =
      UsualWords.orOther("measured better here", "matched pair", "machined to suit");

  private OnPurpose() {}
}
