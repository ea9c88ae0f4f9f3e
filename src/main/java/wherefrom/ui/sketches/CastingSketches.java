package wherefrom.ui.sketches;

import static wherefrom.ui.sketches.Sketch.box;
import static wherefrom.ui.sketches.Sketch.disc;

import java.util.List;

/** Block, head, crank, cam and oil. */
final class CastingSketches {
  static final List<Sketch> ROWS =
      List.of(
          journal("rod-journal"),
          journal("main-journal"),
          housing("rod-housing"),
          housing("main-housing"),
          Sketch.of("head")
              .body(box(6, 10, 108, 40))
              .hollow(disc(24, 30, 11))
              .hollow(disc(48, 30, 11))
              .hollow(disc(72, 30, 11))
              .hollow(disc(96, 30, 11))
              .line("M8 13H112M8 30H112M8 47H112M8 12L112 48M8 48L112 12")
              .look("head-flat", 60, 30, 9, "between chambers")
              .look("head-flat", 36, 13, 6, "six lines")
              .look("head-crack", 48, 30, 8, "between the seats")
              .look("head-pressure", 60, 16, 6, "water passages")
              .look("head-threads", 60, 47, 6, "each hole"),
          Sketch.of("block")
              .body(box(8, 8, 104, 46))
              .hollow(disc(26, 22, 9))
              .hollow(disc(49, 22, 9))
              .hollow(disc(72, 22, 9))
              .hollow(disc(95, 22, 9))
              .line("M12 40H108M12 46H108")
              .hollow(disc(14, 12, 2))
              .hollow(disc(106, 12, 2))
              .hollow(disc(37, 12, 2))
              .hollow(disc(60, 12, 2))
              .hollow(disc(84, 12, 2))
              .look("block-crack", 60, 22, 7, "between bores")
              .look("block-pressure", 37, 31, 7, "water jacket")
              .look("block-threads", 84, 12, 5, "each hole")
              .look("block-dowels", 14, 12, 5, "dowel")
              .look("gallery-plugs", 10, 40, 6, "plug")
              .look("galleries", 60, 43, 8, "from end to end"),
          Sketch.of("chamber")
              .body(box(20, 4, 80, 52))
              .hollow(disc(60, 30, 22))
              .body(disc(49, 30, 9))
              .body(disc(70, 26, 7))
              .hollow(disc(66, 44, 4))
              .look("chamber-crack", 60, 28, 6, "between the seats")
              .look("plug-thread", 66, 44, 6, "plug hole"),
          Sketch.of("deck")
              .body(box(6, 8, 108, 44))
              .hollow(disc(24, 30, 12))
              .hollow(disc(48, 30, 12))
              .hollow(disc(72, 30, 12))
              .hollow(disc(96, 30, 12))
              .line("M8 12H112M8 30H112M8 48H112M8 10L112 50M8 50L112 10")
              .look("deck-flat", 60, 30, 9, "between bores")
              .look("deck-flat", 36, 12, 6, "six lines"),
          Sketch.of("timing")
              .body(disc(26, 30, 12))
              .body(disc(90, 30, 22))
              .hollow(disc(26, 30, 4))
              .hollow(disc(90, 30, 4))
              .line("M26 16L88 6M26 44L88 54")
              .look("gear-teeth", 104, 14, 9, "teeth")
              .look("gear-teeth", 16, 22, 8, "teeth")
              .look("chain-slack", 56, 48, 11, "mid-span, in and out"),
          Sketch.of("crank")
              .body(box(4, 26, 16, 10))
              .body(box(20, 12, 6, 30))
              .body(box(26, 12, 18, 10))
              .body(box(44, 12, 6, 30))
              .body(box(50, 26, 18, 10))
              .body(box(68, 20, 6, 30))
              .body(box(74, 40, 18, 10))
              .body(box(92, 20, 6, 30))
              .body(box(98, 26, 18, 10))
              .look("crank-look", 27, 22, 7, "fillet")
              .look("crank-look", 8, 31, 8, "snout")
              .look("crank-look", 59, 31, 9, "bow: center main"),
          Sketch.of("camshaft")
              .body(box(4, 27, 112, 8))
              .body(box(12, 20, 12, 22))
              .body(box(34, 16, 8, 22))
              .body(box(50, 24, 8, 22))
              .body(box(66, 20, 12, 22))
              .body(box(88, 14, 10, 34))
              .look("cam-look", 18, 31, 9, "journal")
              .look("cam-look", 72, 31, 9, "journal")
              .look("cam-look", 93, 16, 8, "gear"),
          Sketch.of("oil")
              .body("M10 20H50V48H10Z")
              .hollow("M14 26H46V44H14Z")
              .body(box(66, 12, 12, 38))
              .line("M69 12V50M72 12V50M75 12V50")
              .body("M96 22H110V30H106V48H100V30H96Z")
              .look("oil-look", 30, 35, 11, "cloth")
              .look("oil-look", 72, 31, 11, "filter pleats")
              .look("oil-look", 103, 43, 9, "magnet"),
          Sketch.of("oil-pump")
              .body(box(24, 6, 72, 48))
              .hollow(disc(48, 30, 17))
              .hollow(disc(72, 30, 17))
              .body(disc(48, 30, 7))
              .body(disc(72, 30, 7))
              .look("oil-pump-look", 33, 30, 9, "tips and wall")
              .look("oil-pump-look", 60, 30, 8, "where they mesh"),
          Sketch.of("flywheel")
              .body(disc(60, 30, 27))
              .hollow(disc(60, 30, 8))
              .line("M44 30A16 16 0 0 1 76 30A16 16 0 0 1 44 30")
              .look("flywheel-face", 60, 12, 9, "clutch face")
              .look("flywheel-face", 73, 30, 7, "bolt holes")
              .look("flywheel-face", 86, 30, 7, "ring gear"),
          Sketch.of("damper")
              .body(disc(60, 30, 27))
              .line("M41 30A19 19 0 0 1 79 30A19 19 0 0 1 41 30")
              .hollow(disc(60, 30, 9))
              .look("damper-rubber", 60, 11, 9, "rubber")
              .look("damper-rubber", 68, 30, 7, "seal's track"),
          Sketch.of("core-plugs")
              .body(box(8, 10, 104, 40))
              .hollow(disc(34, 30, 10))
              .hollow(disc(60, 30, 10))
              .hollow(disc(86, 30, 10))
              .look("core-plugs-look", 34, 30, 12, "rust")
              .look("core-plugs-look", 60, 42, 9, "wet below"));

  private CastingSketches() {}

  private static Sketch journal(String kind) {
    return Sketch.of(kind)
        .body(box(14, 4, 20, 52))
        .body(box(34, 16, 52, 28))
        .body(box(86, 4, 20, 52))
        .hollow(disc(60, 30, 3))
        .look(kind + "-look", 48, 24, 10, "nail along it")
        .look(kind + "-look", 82, 42, 6, "clear of the fillet");
  }

  private static Sketch housing(String kind) {
    return Sketch.of(kind)
        .body("M20 6H100V54H20Z")
        .hollow(disc(60, 30, 19))
        .line("M20 30H41M79 30H100")
        .look(kind + "-look", 60, 12, 8, "bare metal inside")
        .look(kind + "-look", 60, 48, 8, "and in the cap")
        .look("main-threads", 28, 30, 7, "bolt hole")
        .look("main-threads", 92, 30, 7, "register");
  }
}
