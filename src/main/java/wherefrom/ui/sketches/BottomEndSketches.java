package wherefrom.ui.sketches;

import static wherefrom.ui.sketches.Sketch.box;
import static wherefrom.ui.sketches.Sketch.disc;

import java.util.List;

/** Shells, rods, caps, pistons. */
final class BottomEndSketches {
  private static final String SHELL = "M18 46A42 42 0 0 1 102 46H94A34 34 0 0 0 26 46Z";
  private static final String ROD =
      "M6 30A11 11 0 0 1 27 24L72 18A22 22 0 0 1 92 8V52A22 22 0 0 1 72 42L27 36A11 11 0 0 1 6 30Z";
  private static final String CAP = "M22 46V30Q24 12 60 12Q96 12 98 30V46H80A20 18 0 0 0 40 46Z";

  static final List<Sketch> ROWS =
      List.of(
          shell("rod-shell"),
          shell("main-shell"),
          Sketch.of("rod")
              .body(ROD)
              .hollow(disc(16, 30, 6))
              .body("M94 8A22 22 0 0 1 94 52Z")
              .hollow(disc(92, 30, 14))
              .look("rod-mark", 90, 11, 8, "number, both sides")
              .look("rod-bend", 48, 29, 13, "straight?"),
          cap("rod-cap", "rod-cap-mark", "number, parting face"),
          cap("main-cap", "main-cap-mark", "number and arrow"),
          Sketch.of("piston")
              .body("M34 6H86V26H90V54H74V44H46V54H30V26H34Z")
              .line("M34 11H86M34 16H86M34 21H86")
              .hollow(disc(60, 32, 7))
              .look("piston-skirt", 33, 44, 10, "skirt")
              .look("piston-skirt", 84, 14, 8, "lands")
              .look("piston-crown", 60, 6, 11, "top"),
          Sketch.of("cam-bearing")
              .body(disc(60, 30, 25))
              .hollow(disc(60, 30, 19))
              .hollow(disc(60, 8, 2.5))
              .look("cam-bearing-face", 60, 49, 9, "face")
              .look("cam-bearing-face", 60, 8, 7, "oil hole"),
          Sketch.of("bore")
              .body(box(26, 6, 68, 50))
              .hollow(box(36, 6, 48, 50))
              .line("M36 14H84")
              .look("bore-look", 36, 13, 8, "ridge")
              .look("bore-look", 84, 32, 11, "thrust side")
              .look("bore-crack", 60, 13, 8, "top of the bore"),
          Sketch.of("rings")
              .body("M62 4A26 26 0 1 1 58 4V10A20 20 0 1 0 62 10Z")
              .look("ring-look", 60, 7, 9, "gap"));

  private BottomEndSketches() {}

  private static Sketch shell(String kind) {
    return Sketch.of(kind)
        .body(SHELL)
        .hollow(box(17, 46, 10, 3))
        .look(kind + "-face", 60, 14, 9, "face, inside")
        .look(kind + "-back", 60, 4, 8, "back, outside")
        .look(kind + "-back", 27, 18, 8, "toward the edge");
  }

  private static Sketch cap(String kind, String check, String words) {
    return Sketch.of(kind)
        .body(CAP)
        .hollow(disc(31, 36, 4))
        .hollow(disc(89, 36, 4))
        .look(check, 60, 19, 9, words)
        .look(check, 90, 46, 7, "parting face");
  }
}
