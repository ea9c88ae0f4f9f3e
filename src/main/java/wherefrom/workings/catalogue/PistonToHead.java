package wherefrom.workings.catalogue;

import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Values;
import wherefrom.workings.maths.Dual;

/** The gap between piston edge and head at top dead centre: deck plus gasket. */
public final class PistonToHead {
  public static final String KEY = "piston-to-head";

  /** The least usual gap, in mm: 0.035 in. */
  public static final Minimum LEAST =
      new Minimum("0.035 in (0.040 in for long rods or high speed)", "0.889", Source.fromMemory());

  private PistonToHead() {}

  static Values withCaution(Dual gap, Values values) {
    return values.noteIf(
        LEAST.isUndercutBy(gap),
        () ->
            Note.caution(
                KEY + "-small",
                "Piston to head is under the usual least of "
                    + LEAST.words()
                    + ": the piston may touch the head at speed.",
                LEAST.source()));
  }
}
