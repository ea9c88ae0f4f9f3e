package wherefrom.job.puttogether;

import java.util.List;

/** The reasons for fitting a part against a stop. */
public final class OnPurpose {
  /** The reason that wants words of the person's own. */
  public static final String OTHER = "other";

  /** The reasons to choose from; the last one wants words of the person's own. */
  public static final List<String> REASONS =
      List.of("measured better here", "matched pair", "machined to suit", OTHER);

  private OnPurpose() {}
}
