package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;

/** The readings of one station, in the order taken. */
public record Sample(Station station, List<Amount> readings) {
  public Sample {
    readings = List.copyOf(readings);
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("no reading at " + station.key());
    }
  }

  /** The unit of the first reading. */
  public Unit unit() {
    return readings.get(0).unit();
  }

  public double mean() {
    return readings.stream().mapToDouble(reading -> reading.in(unit())).average().orElseThrow();
  }

  /** The standard deviation of the repeats; 0 for a single reading. */
  public double scatter() {
    if (readings.size() < 2) {
      return 0;
    }
    double mean = mean();
    double squares =
        readings.stream()
            .mapToDouble(reading -> reading.in(unit()) - mean)
            .map(away -> away * away)
            .sum();
    return Math.sqrt(squares / (readings.size() - 1));
  }

  /** The mean with the tool's uncertainty. */
  public Measured measured(Tool tool) {
    double u = tool.uncertainty(mean(), unit(), readings.size(), scatter());
    return Measured.of(Amount.of(mean(), unit()), Amount.of(u, unit()));
  }
}
