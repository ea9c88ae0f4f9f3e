package wherefrom.engine;

/** Flat lifters wear in to one lobe for life; roller lifters carry a wheel. */
public enum LifterType {
  FLAT,
  ROLLER
}
