package wherefrom.ui.sketches;

import static wherefrom.ui.sketches.Sketch.box;
import static wherefrom.ui.sketches.Sketch.disc;

import java.util.List;

/** A cylinder under air, a vacuum gauge, and what hangs on the engine. */
final class TeardownSketches {
  static final List<Sketch> ROWS =
      List.of(
          Sketch.of("compression")
              .body(box(4, 12, 112, 44))
              .hollow("M18 20H50V54H18Z")
              .hollow("M70 20H102V54H70Z")
              .body(box(18, 24, 32, 16))
              .body(box(70, 34, 32, 16))
              .line("M30 20L24 6M38 20L46 6M34 12V2")
              .look("leak-intake", 22, 8, 6, "carburetor")
              .look("leak-exhaust", 48, 8, 6, "tail pipe")
              .look("leak-crankcase", 34, 50, 7, "oil filler")
              .look("leak-coolant", 10, 34, 6, "radiator")
              .look("leak-neighbor", 86, 24, 8, "next plug hole"),
          Sketch.of("running")
              .body(disc(60, 30, 28))
              .hollow(disc(60, 30, 23))
              .line("M60 30L74 14M60 30L60 10")
              .body(disc(60, 30, 3))
              .look("needle-low", 46, 22, 8, "steady, low")
              .look("needle-beat", 67, 13, 8, "one dip each time")
              .look("needle-now-and-then", 67, 13, 8, "dips, no beat")
              .look("needle-wider", 67, 13, 11, "swings wider")
              .look("needle-narrower", 67, 13, 7, "smaller, faster")
              .look("needle-steadies", 67, 13, 8, "still with speed")
              .look("needle-no-sweep", 60, 40, 9, "open the throttle"),
          Sketch.of("outside")
              .body(box(24, 18, 72, 34))
              .body(box(50, 6, 20, 12))
              .line("M24 26C12 26 12 44 4 44M70 10C88 4 92 10 96 22M96 30H112V48")
              .line("M34 18V8M42 18V10M78 18V10M86 18V8")
              .look("hoses-photo", 12, 34, 8, "both ends")
              .look("wires-photo", 38, 10, 8, "number each lead")
              .look("brackets-photo", 108, 38, 8, "bolts with it")
              .look("linkage-photo", 60, 12, 8, "springs, holes"));

  private TeardownSketches() {}
}
