package wherefrom.ui.drawn;

import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.PartFigure;

/** The figure of one place. */
final class PartNode extends LookNode {
  private final PartFigure figure;

  PartNode(PartFigure figure, DrawnAs first) {
    super(figure.shapes(), first);
    this.figure = figure;
  }

  PartFigure figure() {
    return figure;
  }
}
