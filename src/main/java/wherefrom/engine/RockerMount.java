package wherefrom.engine;

/** Each rocker on a pivot of its own, or several on a shaft. */
public enum RockerMount {
  INDIVIDUAL,
  SHAFT
}
