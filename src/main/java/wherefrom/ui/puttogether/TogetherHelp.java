package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import wherefrom.drawing.DrawnAs;
import wherefrom.engine.Layout;
import wherefrom.parts.Part;
import wherefrom.rules.VerdictWords;
import wherefrom.ui.app.Help;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.drawn.PartShape;

/**
 * What to do now while putting together: what leads out of the stop that stands, else what to scan.
 */
record TogetherHelp(PutTogetherModel model, Scale scale) {

  Help help() {
    return model.stop().isPresent() ? ofStop() : Help.of(PutTogetherScreen.class);
  }

  private Help ofStop() {
    String cure = model.stopped().words().map(VerdictWords::advice).orElse("");
    String reason =
        model.stopped().canFitOnPurpose()
            ? "On purpose: press its key, say why, then hold. By cards: NEXT to a key, then YES;"
                + " on a key to hold, YES twice."
            : "";
    List<String> all =
        Stream.of(cure, "Was it the wrong scan? Scan UNDO, or press it.", reason)
            .filter(sentence -> !sentence.isEmpty())
            .toList();
    return new Help(all);
  }

  /** The part that is stopped, or the one that is in the hand or wanted. */
  Optional<Region> picture(double side) {
    Layout layout = model.state().layout();
    return model
        .stopped()
        .part()
        .map(Part::home)
        .or(() -> model.halves().flatMap(Halves::here))
        .map(place -> new PartShape(scale, layout, place, side, DrawnAs.HERE));
  }
}
