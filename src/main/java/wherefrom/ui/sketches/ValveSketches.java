package wherefrom.ui.sketches;

import static wherefrom.ui.sketches.Sketch.box;
import static wherefrom.ui.sketches.Sketch.disc;

import java.util.List;

/** Valves, springs and what holds them. */
final class ValveSketches {
  static final List<Sketch> ROWS =
      List.of(
          Sketch.of("valve-tip")
              .body(disc(60, 30, 26))
              .hollow(box(54, 8, 12, 44))
              .line("M34 30H86")
              .look("tip-pattern", 60, 30, 10, "narrow, in the middle")
              .look("tip-pattern", 82, 30, 6, "never at an edge"),
          Sketch.of("valve")
              .body("M8 26H14V24H20V26H76Q92 26 100 8H106V52H100Q92 34 76 34H20V36H14V34H8Z")
              .line("M100 8V52")
              .look("valve-tip", 10, 30, 9, "tip and groove")
              .look("valve-stem", 50, 30, 14, "stem")
              .look("valve-margin", 103, 10, 9, "rim")
              .look("valve-margin", 103, 50, 9, "rim"),
          Sketch.of("spring")
              .line("M30 54H92")
              .body("M40 50L76 46V50L40 54Z")
              .body("M40 41L76 37V41L40 45Z")
              .body("M40 32L76 28V32L40 36Z")
              .body("M40 23L76 19V23L40 27Z")
              .body("M40 14L76 10V14L40 18Z")
              .line("M84 54V6")
              .look("spring-square", 80, 12, 10, "gap at the top")
              .look("spring-wire", 58, 30, 14, "every coil")
              .look("spring-height", 58, 11, 11, "top, against the others"),
          Sketch.of("retainer")
              .body("M24 14H96V26H84V36H36V26H24Z")
              .hollow("M50 14H70L66 36H54Z")
              .look("retainer-cone", 60, 24, 12, "cone")
              .look("retainer-cone", 30, 27, 8, "seat of the spring"),
          Sketch.of("keepers")
              .body("M34 10H56V50H42Z")
              .body("M86 10H64V50H78Z")
              .hollow(box(52, 26, 4, 6))
              .hollow(box(64, 26, 4, 6))
              .look("keeper-beads", 53, 29, 9, "bead")
              .look("keeper-beads", 68, 29, 9, "bead"),
          Sketch.of("valve-seat")
              .body(box(10, 6, 100, 48))
              .hollow(disc(60, 30, 20))
              .hollow(disc(60, 30, 15))
              .body(disc(60, 30, 5))
              .look("seat-look", 78, 30, 9, "even ring?"));

  private ValveSketches() {}
}
