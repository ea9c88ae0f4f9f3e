package wherefrom.drawing;

/**
 * The main bearings along the crank. They stand in the bays before, between and behind the bores,
 * spread evenly; where a bearing would come to lie at a bore, it takes the bay nearer to its end of
 * the engine. More mains than bays stand closer, and are drawn smaller so that none touches the
 * next.
 */
public final class MainRow {
  /** What a main with its flanges takes along the crank, in pitches. */
  private static final double ROOM = 0.44;

  private final int count;
  private final int bores;
  private final double first;
  private final double pitch;

  MainRow(int count, int bores, double first, double pitch) {
    this.count = count;
    this.bores = bores;
    this.first = first;
    this.pitch = pitch;
  }

  public int count() {
    return count;
  }

  /** Where a main stands; they count from 1 at the front. */
  public double x(int main) {
    return first + bay(main - 1) * pitch;
  }

  private double bay(int at) {
    if (count == 1) {
      return Math.floor(bores / 2.0);
    }
    double even = (double) at * bores / (count - 1);
    if (count > bores + 1) {
      return even;
    }
    return at <= (count - 1) / 2 ? Math.floor(even) : Math.ceil(even);
  }

  /** The least distance of two mains, in the drawing's unit; the whole crank for a single one. */
  public double spacing() {
    double least = bores * pitch;
    for (int main = 2; main <= count; main++) {
      least = Math.min(least, x(main) - x(main - 1));
    }
    return least;
  }

  /** The pitch that a main is drawn with: smaller where they stand close. */
  double drawnPitch() {
    return Math.min(pitch, spacing() / ROOM);
  }
}
