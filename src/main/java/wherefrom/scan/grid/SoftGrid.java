package wherefrom.scan.grid;

import wherefrom.parts.SymbolLayout;

/**
 * One soft value for each data module, in the order of the codewords' bits: above 0 dark, below 0
 * light, near 0 nothing known; from -{@link #MOST} to {@link #MOST}.
 */
public final class SoftGrid {
  public static final float MOST = 1.3f;

  private final float[] darkness;
  private final double fixedAgreement;

  SoftGrid(float[] darkness, double fixedAgreement) {
    this.darkness = darkness;
    this.fixedAgreement = fixedAgreement;
  }

  /** A grid of values from elsewhere, at least {@link SymbolLayout#DATA_BITS}. */
  public static SoftGrid of(float[] darkness, double fixedAgreement) {
    return new SoftGrid(darkness.clone(), fixedAgreement);
  }

  public float darkness(int bit) {
    return darkness[bit];
  }

  /** One value for each data module; a copy. */
  public float[] darkness() {
    return darkness.clone();
  }

  /** Correlation of the modules that are alike on every tag with what they should be. */
  public double fixedAgreement() {
    return fixedAgreement;
  }

  /** This grid plus another, value by value: evidence of several frames adds up. */
  public SoftGrid plus(SoftGrid other, double otherWeight) {
    float[] sum = new float[SymbolLayout.DATA_BITS];
    for (int bit = 0; bit < sum.length; bit++) {
      sum[bit] = (float) (darkness[bit] + otherWeight * other.darkness[bit]);
    }
    return new SoftGrid(sum, Math.max(fixedAgreement, other.fixedAgreement));
  }
}
