package wherefrom.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of the engine that is closed up as one: the valvetrain of a bank, the rods, the mains, the
 * cam bearings.
 *
 * @param key short name in files: {@code valvetrain-left}, {@code rods}, {@code mains}, {@code cam}
 * @param words what a person reads
 */
public record Section(String key, String words) {
  public static final Section RODS = new Section("rods", "rods and pistons");
  public static final Section MAINS = new Section("mains", "main bearings");
  public static final Section CAM = new Section("cam", "cam bearings");

  /** The valvetrain of one bank. */
  public static Section valvetrain(Layout layout, Bank bank) {
    return layout.banks().size() == 1
        ? new Section("valvetrain", "valvetrain")
        : new Section("valvetrain-" + bank.name(), "valvetrain, " + bank.name() + " bank");
  }

  /** All sections of a layout, top to bottom. */
  public static List<Section> all(Layout layout) {
    List<Section> sections = new ArrayList<>();
    for (Bank bank : layout.banks()) {
      sections.add(valvetrain(layout, bank));
    }
    sections.add(RODS);
    sections.add(MAINS);
    sections.add(CAM);
    return sections;
  }

  /** The section that a spot belongs to. The spot must be one of the layout's. */
  public static Section of(Layout layout, Spot spot) {
    return spot.match(
        valve -> ofCylinder(layout, valve.cylinder()),
        bore -> RODS,
        rod -> RODS,
        main -> MAINS,
        camBearing -> CAM);
  }

  private static Section ofCylinder(Layout layout, int cylinder) {
    return layout
        .findBank(cylinder)
        .map(bank -> valvetrain(layout, bank))
        .orElseThrow(() -> new IllegalArgumentException("no such cylinder: " + cylinder));
  }
}
