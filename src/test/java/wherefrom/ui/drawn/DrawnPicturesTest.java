package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.Glass;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RockerMount;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.PaperTag;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Wire;

/** Pictures of every drawing, to be looked at; made with {@code -Ddrawn.pictures=true}. */
@EnabledIfSystemProperty(named = "drawn.pictures", matches = "true")
class DrawnPicturesTest {
  private static final Path PICTURES =
      Path.of(System.getProperty("wherefrom.target", "target"), "drawn");
  private static final Set<PartKind> USUAL =
      EnumSet.of(
          PartKind.ROCKER,
          PartKind.PUSHROD,
          PartKind.LIFTER,
          PartKind.SPRING,
          PartKind.ROD_CAP,
          PartKind.ROD_SHELL,
          PartKind.MAIN_CAP,
          PartKind.MAIN_SHELL);

  private final Scale scale = new Scale(Glass.UNITS_PER_MM, 1);
  private final Touch touch = new Touch(scale, System::nanoTime);

  /** An example of every state. */
  private static PartState state(Place place) {
    String key = place.spot().key();
    boolean top = place.kind() == PartKind.ROCKER || place.kind() == PartKind.PUSHROD;
    if (key.startsWith("1") || key.startsWith("R1") || (key.startsWith("3") && top)) {
      return PartState.OUT;
    }
    if (key.equals("2EX")) {
      return place.kind() == PartKind.ROCKER ? PartState.WASHING : PartState.FITTED;
    }
    if (key.equals("2IN")) {
      return place.kind() == PartKind.SPRING ? PartState.FITTED.failed() : PartState.FITTED;
    }
    if (key.equals("4IN")) {
      return place.kind() == PartKind.LIFTER ? PartState.AT_SHOP : PartState.OUT;
    }
    if (key.equals("4EX")) {
      return place.kind() == PartKind.PUSHROD ? PartState.MISSING : PartState.OUT;
    }
    return switch (key) {
      case "6EX" -> PartState.FITTED_BUT;
      case "6IN" -> PartState.IN.suspect();
      case "R2U", "R2L", "M3U", "M3L", "R3U", "R3L" -> PartState.FITTED;
      case "R4L" -> PartState.NOT_CLEARED;
      case "M2L", "R5L", "R5U" -> PartState.OUT;
      case "M1L" -> PartState.OTHER_FITTED;
      default -> PartState.IN;
    };
  }

  private void picture(String name, Region node, double wide, double high, boolean dark)
      throws IOException {
    WritableImage image =
        Toolkit.on(
            () -> {
              Pane root = new Pane(node);
              root.getStyleClass().add("bench");
              root.setStyle("-fx-background-color: -wf-ground;");
              if (dark) {
                root.getStyleClass().add("dark");
              }
              Scene scene = new Scene(root, wide, high);
              scene
                  .getStylesheets()
                  .add(
                      Objects.requireNonNull(
                              DrawnPicturesTest.class.getResource("/wherefrom/ui/wherefrom.css"))
                          .toExternalForm());
              node.setPrefSize(wide - 48, high - 48);
              node.relocate(24, 24);
              root.applyCss();
              root.layout();
              node.applyCss();
              return scene.snapshot(null);
            });
    Files.createDirectories(PICTURES);
    File file = PICTURES.resolve(name + (dark ? "-dark" : "") + ".png").toFile();
    ImageIO.write(SwingFXUtils.fromFXImage(image, null), "png", file);
    Set<Integer> colors = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x += 3) {
      for (int y = 0; y < image.getHeight(); y += 3) {
        colors.add(image.getPixelReader().getArgb(x, y));
      }
    }
    assertThat(colors).as(name).hasSizeGreaterThan(5);
  }

  private void drawing(
      String name,
      Layout layout,
      Asked asked,
      Function<Bounds, Drawing> maker,
      Function<Place, PartState> states,
      Optional<Place> here,
      double high)
      throws IOException {
    for (boolean dark : new boolean[] {false, true}) {
      DrawnEngine engine =
          Toolkit.on(() -> DrawnEngine.keyed(touch, layout, asked, maker, tap -> {}));
      engine.show(states, here.map(Set::of).orElse(Set.of()));
      picture(layout.name() + "-" + name, engine, 1280, high, dark);
    }
  }

  @Test
  void everyReadyLayout() throws IOException {
    for (Layout layout : ReadyLayouts.all()) {
      Asked asked = Asked.of(USUAL);
      Drawn drawn = new Drawn(layout, asked, scale);
      Place here = place("rocker@3EX");
      drawing(
          "above", layout, asked, drawn.above(), DrawnPicturesTest::state, Optional.of(here), 720);
      Place shell = place("rod-shell@R3L");
      drawing(
          "below",
          layout,
          asked,
          drawn.below(BelowPanRail.NAMES),
          DrawnPicturesTest::state,
          Optional.of(shell),
          720);
      drawing(
          "keys",
          layout,
          asked,
          drawn.below(BelowPanRail.KEYS),
          DrawnPicturesTest::state,
          Optional.empty(),
          720);
    }
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  @Test
  void theLargeDrawings() throws IOException {
    Layout stud = ReadyLayouts.find("v8-odd-even").orElseThrow();
    Layout shaft = other(stud, "v8-shaft-roller");
    Set<PartKind> all = PartKind.all();
    for (Layout layout : List.of(stud, shaft)) {
      for (Set<PartKind> kinds : List.of(USUAL, all)) {
        Asked asked = Asked.of(kinds);
        Drawn drawn = new Drawn(layout, asked, scale);
        String many = kinds.equals(all) ? "-all" : "";
        Place here = place("pushrod@3IN");
        drawing(
            "zoom" + many,
            layout,
            asked,
            drawn.cylinder(3),
            DrawnPicturesTest::state,
            Optional.of(here),
            728);
      }
    }
    for (Layout layout : ReadyLayouts.all()) {
      Asked asked = Asked.of(USUAL);
      Drawn drawn = new Drawn(layout, asked, scale);
      drawing(
          "mains",
          layout,
          asked,
          drawn.mains(1),
          DrawnPicturesTest::state,
          Optional.of(place("main-shell@M2U")),
          717);
    }
    Asked asked = Asked.of(USUAL);
    Drawn drawn = new Drawn(stud, asked, scale);
    drawing(
        "bearing",
        stud,
        asked,
        drawn.bearing(new RodSpot(3, ShellHalf.UPPER), Set.of()),
        DrawnPicturesTest::state,
        Optional.of(place("rod-shell@R3U")),
        500);
  }

  @Test
  void theChosenKinds() throws IOException {
    Layout v8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
    Set<PartKind> all = PartKind.all();
    for (PartKind kind : all) {
      Asked asked = Asked.of(all, kind);
      Drawn drawn = new Drawn(v8, asked, scale);
      boolean below = kind.compareTo(PartKind.ROD_CAP) >= 0 && kind != PartKind.CAM_BEARING;
      drawing(
          "chosen-" + kind.key(),
          v8,
          asked,
          below ? drawn.below(BelowPanRail.NONE) : drawn.above(),
          place -> place.kind() == kind ? state(place) : PartState.OUT,
          Optional.empty(),
          600);
    }
  }

  static Layout other(Layout from, String name) {
    return new Layout(
        name,
        name,
        from.arrangement(),
        from.vee(),
        from.banks(),
        from.leadingBank(),
        from.firingOrder(),
        from.mains(),
        from.thrustMain(),
        from.mainCaps(),
        from.rodJournals(),
        from.camBearings(),
        LifterType.ROLLER,
        RockerMount.SHAFT);
  }

  @Test
  void tagsAndWire() throws IOException {
    for (boolean dark : new boolean[] {false, true}) {
      Pane pane =
          Toolkit.on(
              () -> {
                TagKey tag = touch.tag("Scan the right part", "or type its code", () -> {});
                TagKey small = touch.tag("Print", "", () -> {});
                PaperTag paper = new PaperTag(scale, touch.heading("3 EX pushrod"));
                Wire wire = new Wire(scale);
                Pane all = new Pane(tag, small, paper, wire);
                tag.setPrefSize(514, 136);
                tag.relocate(20, 120);
                small.setPrefSize(320, 133);
                small.relocate(20, 320);
                paper.setPrefSize(400, 120);
                paper.relocate(600, 120);
                wire.lead(
                    List.of(
                        new Point2D(50, 188),
                        new Point2D(10, 188),
                        new Point2D(10, 40),
                        new Point2D(700, 40),
                        new Point2D(700, 110)));
                return all;
              });
      picture("tags", pane, 1100, 520, dark);
    }
  }
}
