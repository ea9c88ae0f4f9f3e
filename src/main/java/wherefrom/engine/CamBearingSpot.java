package wherefrom.engine;

import java.util.Optional;

/** A camshaft bearing, counted from the front. */
public record CamBearingSpot(int number) implements Spot {
  @Override
  public String words() {
    return "cam bearing " + number;
  }

  @Override
  public String figures() {
    return "C" + number;
  }

  @Override
  public String brief() {
    return words();
  }

  @Override
  public String key() {
    return "C" + number;
  }

  @Override
  public Optional<Integer> findCylinder() {
    return Optional.empty();
  }

  @Override
  public Optional<ShellHalf> findHalf() {
    return Optional.empty();
  }
}
