package wherefrom.ui.benchmap;

/**
 * The bench's title where large letters leave nothing room beside it: it tells what must not be
 * left out.
 *
 * @param aside what stands beside it where there is room after all
 */
record BenchTitle(String title, String aside) {

  /** {@code Scan into basket 4}, {@code 1 fitted, not cleared}, else {@code Bench: 16 pushrods}. */
  static BenchTitle brief(BenchMapModel model) {
    if (model.mode() == BenchMapModel.Mode.WASH) {
      return new BenchTitle("Scan into basket " + model.basket(), "");
    }
    String notCleared = model.tally().notCleared();
    String marked = model.briefAside();
    if (notCleared.isEmpty()) {
      return new BenchTitle(model.title(), marked.isEmpty() ? model.aside() : marked);
    }
    return new BenchTitle(notCleared, marked.isEmpty() ? model.title() : marked);
  }
}
