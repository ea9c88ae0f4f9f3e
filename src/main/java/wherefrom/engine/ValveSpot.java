package wherefrom.engine;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** One valve's place in the valvetrain, from lifter to spring. */
public record ValveSpot(int cylinder, ValveSide side) implements Spot {
  @Override
  public String words() {
    return String.format(Locale.ROOT, "cylinder %d, %s", cylinder, side.word());
  }

  @Override
  public String figures() {
    return cylinder + " " + side.figures();
  }

  @Override
  public String brief() {
    return figures();
  }

  @Override
  public String key() {
    return cylinder + side.figures();
  }

  @Override
  public int number() {
    return cylinder;
  }

  @Override
  public Optional<Integer> findCylinder() {
    return Optional.of(cylinder);
  }

  @Override
  public Optional<ShellHalf> findHalf() {
    return Optional.empty();
  }

  @Override
  public <R> R match(
      Function<ValveSpot, R> valve,
      Function<BoreSpot, R> bore,
      Function<RodSpot, R> rod,
      Function<MainSpot, R> main,
      Function<CamBearingSpot, R> camBearing) {
    return valve.apply(this);
  }
}
