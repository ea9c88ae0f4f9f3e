package wherefrom.drawing;

/** A point of a drawing, in the drawing's unit; x runs to the right, y down. */
public record Point(double x, double y) {}
