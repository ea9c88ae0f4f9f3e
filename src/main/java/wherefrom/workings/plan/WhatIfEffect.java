package wherefrom.workings.plan;

/** What a what-if does to the engine, as plain keys for the consequence rules. */
public enum WhatIfEffect {
  HEAD_MILLED("head-milled", "The heads are milled."),
  DECK_MILLED("deck-milled", "The block's deck is milled."),
  GASKET_CHANGED("gasket-changed", "The head gasket has another thickness."),
  INTAKE_CORRECTED("intake-corrected", "Intake faces or manifold need cutting."),
  PUSHROD_LENGTH_CHANGED("pushrod-length-changed", "Pushrods of another length are needed."),
  LIFT_INCREASED("lift-increased", "The valves lift farther."),
  CAM_CHANGED("cam-changed", "The cam's lift or base circle changes."),
  ROCKER_RATIO_CHANGED("rocker-ratio-changed", "The rocker ratio changes."),
  SEAT_WORK("seat-work", "Valve seats or tips change height."),
  SPRINGS_CHANGED("springs-changed", "Other valve springs go in."),
  SPRINGS_SHIMMED("springs-shimmed", "The springs stand at another height."),
  BORED("bored", "The cylinders are bored."),
  CRANK_CHANGED("crank-changed", "The stroke changes."),
  PISTONS_CHANGED("pistons-changed", "The piston crown changes.");

  private final String key;
  private final String words;

  WhatIfEffect(String key, String words) {
    this.key = key;
    this.words = words;
  }

  public String key() {
    return key;
  }

  public String words() {
    return words;
  }
}
