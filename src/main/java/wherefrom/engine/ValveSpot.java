package wherefrom.engine;

import java.util.Locale;
import java.util.Optional;

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
}
