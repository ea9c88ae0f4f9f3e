package wherefrom.engine;

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
}
