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
 * <p>With 256 issued symbols, 32 grids a frame and 200,000 frames there are 1.6·10⁹ chances. At z =
 * {@link #EVIDENCE} each is below 6.9·10⁻¹³ by Hoeffding's bound (3.5·10⁻¹⁴ for a normal sum), so
 * in all 200,000 frames fewer than 0.002 wrong readings are to be expected. The clearest symbol
 * there is has z = √208 = 14.4.
 *
 * <p>A tag that is not in the list but is a relative of one that is (a neighbouring item of the
 * same engine) shares digits with it, and its signs are no fair coin's: two such symbols agree in
 * about 65 % of the data modules. The relatives most likely to turn up, other issues of the same
 * item, are scored too and win. For all others the lead over the runner-up counts as well.
 */
public final class AcceptanceBound {
  /** Least evidence, in standard deviations of a chance score. */
  public static final double EVIDENCE = 7.5;

  /** Least lead over the runner-up, in standard deviations. */
  public static final double LEAD = 3.5;

  private AcceptanceBound() {}

  /** Whether an issued tag was certainly seen. */
  public static boolean accepts(Match match) {
    return match.issued() && match.evidence() >= EVIDENCE && match.lead() >= LEAD;
  }
}
