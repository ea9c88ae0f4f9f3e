package wherefrom.ui.shop;

import wherefrom.rules.consequence.ShopWork;

/**
 * What is wanted of something that goes to the machine shop.
 *
 * @param kind the kind of work, for what follows once a tagged part is back
 * @param work in words; empty while nobody said
 * @param size the size wanted back, as typed; may be empty
 * @param within how far from it is good, as typed; may be empty
 * @param unit the unit of figures that carry none
 */
record WorkWanted(ShopWork kind, String work, String size, String within, String unit) {
  static final WorkWanted NOTHING = of("");

  static WorkWanted of(String work) {
    return of(ShopWork.OTHER, work);
  }

  static WorkWanted of(ShopWork kind, String work) {
    return new WorkWanted(kind, work, "", "", "");
  }

  /** {@code grind to 3.8900 in, within 0.0005 in}. */
  String words() {
    String target = size.isEmpty() ? "" : " " + size + " " + unit;
    String limit = within.isEmpty() ? "" : ", within " + within + " " + unit;
    return work + target + limit;
  }
}
