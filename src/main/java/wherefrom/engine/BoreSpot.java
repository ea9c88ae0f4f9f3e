package wherefrom.engine;

import java.util.Optional;

/** A cylinder bore, where the piston runs. */
public record BoreSpot(int cylinder) implements Spot {
  @Override
  public String words() {
    return "cylinder " + cylinder + ", bore";
  }

  @Override
  public String figures() {
    return "B" + cylinder;
  }

  @Override
  public String brief() {
    return "cylinder " + cylinder;
  }

  @Override
  public String key() {
    return "B" + cylinder;
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
