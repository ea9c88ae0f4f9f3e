package wherefrom.scan.match;

/**
 * When a match may be believed.
 *
 * <p>The score of a symbol on a grid is the sum over the data modules of its signs times the soft
 * values. What lies under the grid when no issued tag does (another engine's tag, a foreign code, a
 * washer) has not been chosen with the issued symbols in mind: to it their signs are a fair coin's.
 * By Hoeffding's inequality a sum of independent terms, each plus or minus w(i), reaches t with
 * probability at most exp(-t² / (2 Σ w(i)²)). The evidence z is that sum over √(Σ w(i)²), so a
 * chance score reaches z with probability at most exp(-z²/2), whatever the soft values are.
 *
 * <p>With 256 issued symbols and 200,000 frames of ten grids each there are 5·10⁸ chances. At z =
 * {@link #EVIDENCE} each is below 6.1·10⁻¹³ by Hoeffding's bound, so in all 200,000 frames fewer
 * than 0.001 wrong readings are to be expected. Where the pattern of every label fits well there is
 * a label of ours or something much like it; of such grids there are two a frame at most, 10⁸
 * chances, and {@link #EVIDENCE_IN_PATTERN} keeps the expectation below 0.04 by Hoeffding's bound
 * (0.003 for a normal sum). The clearest symbol there is has z = √208 = 14.4.
 *
 * <p>A tag that is not in the list but is a relative of one that is (a neighbouring item of the
 * same engine) shares digits with it, and its signs are no fair coin's: two such symbols agree in
 * about 65 % of the data modules. The relatives most likely to turn up, other issues of the same
 * item, are scored too and win. A relative clear enough to reach the evidence by what it shares is
 * clear enough to be decoded by its own error correction, which has the first word. The lead over
 * the runner-up guards against what is left.
 */
public final class AcceptanceBound {
  /** Least evidence, in standard deviations of a chance score. */
  public static final double EVIDENCE = 7.5;

  /** Least evidence where the pattern of every label fits well. */
  public static final double EVIDENCE_IN_PATTERN = 6.6;

  /** A fit of the pattern that hardly anything but a label of ours has. */
  public static final double PATTERN = 0.45;

  /** Least lead over the runner-up, in standard deviations. */
  public static final double LEAD = 2;

  private AcceptanceBound() {}

  /**
   * Whether an issued tag was certainly seen.
   *
   * @param pattern fit of the pattern of every label, to 1
   */
  public static boolean accepts(Match match, double pattern) {
    double least = pattern >= PATTERN ? EVIDENCE_IN_PATTERN : EVIDENCE;
    return match.issued() && match.evidence() >= least && match.lead() >= LEAD;
  }
}
