package wherefrom.ui.app;

/** The screens that others lead to. */
public enum ScreenId {
  JOBS,
  NEW_JOB,
  JOB_HOME,
  PRINT_TAGS,
  TAKE_APART,
  BENCH_MAP,
  PART,
  /** The same page, opened by the part's own tag: which part is in the hand is proven. */
  PART_IN_HAND,
  PHOTOGRAPHS,
  BEFORE,
  BETWEEN,
  INSPECT,
  MEASURE,
  CHANGES,
  DECIDE,
  NUMBERS,
  MACHINE_SHOP,
  MONEY,
  BUILD_RECORD,
  PUT_TOGETHER,
  RUN_IN,
  SERVICE,
  TORQUE,
  TIMING,
  PHONES,
  SETTINGS,
  BAGS,
  BAG,
  BIG_PART
}
