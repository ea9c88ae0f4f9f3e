package wherefrom.engine;

import java.util.Optional;

/** The big end of a cylinder's connecting rod: upper is the rod side, lower the cap side. */
public record RodSpot(int cylinder, ShellHalf half) implements Spot {
  @Override
  public String words() {
    return "rod " + cylinder + ", " + (half == ShellHalf.UPPER ? "rod side" : "cap side");
  }

  @Override
  public String figures() {
    return "R" + cylinder + " " + half.figures();
  }

  @Override
  public String brief() {
    return "rod " + cylinder + ", " + half.word();
  }

  @Override
  public String key() {
    return "R" + cylinder + half.letter();
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
    return Optional.of(half);
  }
}
