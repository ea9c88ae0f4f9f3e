package wherefrom.engine;

import java.util.Optional;

/** A main bearing, counted from the front: upper is the block side, lower the cap side. */
public record MainSpot(int number, ShellHalf half) implements Spot {
  @Override
  public String words() {
    return "main " + number + ", " + (half == ShellHalf.UPPER ? "block side" : "cap side");
  }

  @Override
  public String figures() {
    return "M" + number + " " + half.figures();
  }

  @Override
  public String brief() {
    return "main " + number + ", " + half.word();
  }

  @Override
  public String key() {
    return "M" + number + half.letter();
  }

  @Override
  public Optional<Integer> findCylinder() {
    return Optional.empty();
  }

  @Override
  public Optional<ShellHalf> findHalf() {
    return Optional.of(half);
  }
}
