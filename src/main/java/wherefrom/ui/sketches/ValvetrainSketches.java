package wherefrom.ui.sketches;

import static wherefrom.ui.sketches.Sketch.box;
import static wherefrom.ui.sketches.Sketch.disc;

import java.util.List;

/** From the cam lobe to the rocker stud. */
final class ValvetrainSketches {
  static final List<Sketch> ROWS =
      List.of(
          Sketch.of("pushrod")
              .line("M4 46H116")
              .body(box(15, 25, 90, 10))
              .body(disc(14, 30, 7))
              .body(disc(106, 30, 7))
              .line("M22 30H98")
              .look("pushrod-roll", 60, 41, 12, "light under here?")
              .look("pushrod-ends", 12, 30, 11, "tip")
              .look("pushrod-ends", 108, 30, 11, "tip")
              .look("pushrod-oilway", 9, 30, 7, "oil hole")
              .look("pushrod-oilway", 111, 30, 7, "oil hole"),
          Sketch.of("rocker")
              .body(
                  "M10 22Q34 8 60 12Q92 8 110 30Q112 42 100 44Q88 26 72 40Q60 50 48 40Q32 30 18"
                      + " 38Q6 34 10 22Z")
              .hollow("M10 24Q18 34 24 24Z")
              .hollow(disc(60, 29, 8))
              .look("rocker-faces", 17, 27, 10, "cup")
              .look("rocker-faces", 60, 29, 12, "seat")
              .look("rocker-faces", 104, 41, 10, "tip")
              .look("rocker-cracks", 60, 29, 15, "around the seat"),
          Sketch.of("pivot")
              .body("M30 18H90V24Q90 52 60 52Q30 52 30 24Z")
              .hollow(box(53, 18, 14, 34))
              .look("pivot-face", 40, 42, 12, "rounded face")
              .look("pivot-face", 80, 42, 12, "rounded face"),
          Sketch.of("stud")
              .line("M4 50H116")
              .body(box(14, 16, 10, 34))
              .body(box(40, 16, 10, 34))
              .body(box(66, 10, 10, 40))
              .body(box(92, 16, 10, 34))
              .line("M4 14.5H64M78 14.5H116")
              .look("stud-line", 71, 10, 11, "above the line")
              .look("stud-line", 71, 50, 9, "shiny ring"),
          Sketch.of("lifter")
              .body("M38 6H82V48Q60 55 38 48Z")
              .hollow(box(48, 6, 24, 8))
              .line("M38 20H82M38 26H82")
              .line("M28 54.5H92")
              .look("lifter-foot", 60, 51, 13, "foot: domed?")
              .look("lifter-sink", 38, 34, 11, "side, in its bore")
              .look("lifter-wheel", 60, 48, 12, "wheel, if it has one"),
          Sketch.of("lifter-bore")
              .body(box(14, 10, 92, 42))
              .hollow(box(42, 10, 36, 42))
              .look("lifter-bore-look", 42, 31, 11, "wall")
              .look("lifter-bore-look", 78, 31, 11, "wall"),
          Sketch.of("lobe")
              .body("M60 5C72 5 76 26 80 34A20 20 0 1 1 40 34C44 26 48 5 60 5Z")
              .hollow(disc(60, 36, 7))
              .look("lobe-look", 60, 8, 10, "nose")
              .look("lobe-look", 76, 26, 9, "flank and edges"),
          Sketch.of("rocker-shaft")
              .body(box(8, 18, 104, 18))
              .body("M46 10H74V44H46Z")
              .hollow(disc(24, 27, 4))
              .hollow(disc(96, 27, 4))
              .line("M46 36H74")
              .look("rocker-shaft-wear", 60, 36, 10, "loaded side")
              .look("rocker-shaft-wear", 82, 36, 8, "beside it"),
          Sketch.of("cam-journal")
              .body(box(8, 22, 104, 16))
              .body(box(42, 10, 36, 40))
              .line("M52 10V50M68 10V50")
              .look("cam-journal-face", 60, 20, 10, "all around"));

  private ValvetrainSketches() {}
}
