package wherefrom.ui.newjob;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;
import wherefrom.quantity.UnitSystem;

/** What a new job will be begun with. */
final class NewJobModel {
  private String name = "";
  private Layout layout;
  private final Set<PartKind> kinds = PartKind.alwaysOn();
  private UnitSystem units;

  NewJobModel(UnitSystem units) {
    this.units = units;
    this.layout = ReadyLayouts.all().get(0);
  }

  String name() {
    return name;
  }

  void name(String words) {
    name = words;
  }

  Layout layout() {
    return layout;
  }

  void layout(Layout chosen) {
    layout = chosen;
  }

  UnitSystem units() {
    return units;
  }

  void turnUnits() {
    units = units == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
  }

  boolean tracks(PartKind kind) {
    return kinds.contains(kind);
  }

  /** Tracks a kind or not; what every job tracks stays on. */
  void track(PartKind kind, boolean on) {
    if (on) {
      kinds.add(kind);
    } else if (!PartKind.alwaysOn().contains(kind)) {
      kinds.remove(kind);
    }
  }

  /** How many parts of a kind the layout has. */
  int count(PartKind kind) {
    return Places.of(layout, EnumSet.of(kind)).size();
  }

  /** How many parts will be tracked. */
  int count() {
    return Places.of(layout, kinds).size();
  }

  /** The layouts to choose from: the ready ones, then the person's own. */
  static List<Layout> layouts(Shelf shelf) {
    List<Layout> layouts = new ArrayList<>(ReadyLayouts.all());
    layouts.addAll(shelf.listLayouts());
    return layouts;
  }

  /**
   * The job to begin.
   *
   * @throws IllegalArgumentException with a sentence when the name is missing
   */
  Shelf.NewJob begun() {
    if (name.isBlank()) {
      throw new IllegalArgumentException("Give the job a name first.");
    }
    return new Shelf.NewJob(name, layout, kinds, units);
  }
}
