package wherefrom.rules.consequence;

import wherefrom.engine.Layout;

/** How many of something untracked an engine needs. */
enum Count {
  ONE,
  PER_BANK,
  PER_CYLINDER,
  PER_VALVE;

  int in(Layout layout) {
    return switch (this) {
      case ONE -> 1;
      case PER_BANK -> layout.banks().size();
      case PER_CYLINDER -> layout.cylinders().size();
      case PER_VALVE -> 2 * layout.cylinders().size();
    };
  }
}
