package wherefrom.ui.newjob;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;
import wherefrom.quantity.UnitSystem;

/** What a new job will be begun with. */
final class NewJobModel {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private String name;
  private String typed = "";
  private Layout layout;
  private final Set<PartKind> kinds = PartKind.alwaysOn();
  private UnitSystem units;

  /**
   * @param today names the job until the person does
   */
  NewJobModel(UnitSystem units, LocalDate today) {
    this.units = units;
    this.name = "Engine, " + DAY.format(today);
    this.layout = ReadyLayouts.first();
  }

  String name() {
    return name;
  }

  /** What the person has typed so far; empty while the job has its first name. */
  String typed() {
    return typed;
  }

  /** Names the job; no words leave the name that it has. */
  void name(String words) {
    if (!words.isBlank()) {
      typed = words;
      name = words;
    }
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

  /** What is tracked. */
  Set<PartKind> kinds() {
    return EnumSet.copyOf(kinds);
  }

  /** Tracks a kind or not; what every job tracks stays on. */
  void track(PartKind kind, boolean on) {
    if (on) {
      kinds.add(kind);
    } else if (!PartKind.alwaysOn().contains(kind)) {
      kinds.remove(kind);
    }
  }

  /** Tracks besides what of these kinds the layout has; those that are on stay on. */
  void trackAll(Set<PartKind> more) {
    more.stream().filter(kind -> count(kind) > 0).forEach(kinds::add);
  }

  /** What must go back to its place and gets no tag, in a sentence; empty where all has one. */
  String untagged() {
    List<String> left =
        PartKind.recommended().stream()
            .filter(kind -> !kinds.contains(kind) && count(kind) > 0)
            .map(PartKind::plural)
            .toList();
    return left.isEmpty()
        ? ""
        : "No tag yet: " + String.join(", ", left) + ". They must go back where they were.";
  }

  /** {@code 74 parts}, and whether others must go back to their places too. */
  String tags() {
    return count() + " parts" + (untagged().isEmpty() ? "" : "; more must go back");
  }

  /** What matters most of that, in few words. */
  String briefTags() {
    return untagged().isEmpty() ? "Tags for " + count() : "Some get no tag";
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
