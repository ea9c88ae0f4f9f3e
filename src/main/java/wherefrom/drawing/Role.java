package wherefrom.drawing;

import java.util.List;

/** What a shape stands for; with the state of its part it says how the shape looks. */
public enum Role {
  /** Heads, block, tray. */
  CAST(2.4),
  /** Valley, crankcase. */
  DEEP(2.4),
  /** Crank, damper, flywheel, bolts: metal that is no part of its own. */
  METAL(1.8),
  /** Thin lines on castings. */
  EDGE(1.4),
  /** A stud or stand in the color of castings. */
  STAND(1.4),
  /** Castings without an outline, behind the parts of one cylinder. */
  BACK(0),
  /** An opening through which the ground is seen. */
  OPENING(0),
  /** The flywheel's teeth. */
  TEETH(1.2),
  /** The hexagon of a head bolt. */
  NUT(1),
  /** From a cap on the crank to the same cap seen from the end. */
  LEADER(2.2),
  /** The line along which a bearing is taken apart. */
  AXIS(1.4),
  /** From a name to what it names. */
  RULE(2),

  /** A part's outline. */
  BODY(2),
  /** A hollow of a part. */
  HOLLOW(2),
  /** A nut, a bolt head, the middle of a lifter: black where the part was fitted. */
  FASTENER(2),
  /** A line on a part. */
  LINE(2),
  /** The band at a pushrod's top end. */
  BAND(0),

  /** The plate of a mark. */
  PLATE(1.6),
  /** The plate of a mark for what is not there. */
  DASHED_PLATE(1.6),
  /** A black plate, and what is drawn in black. */
  INK(0),
  /** The small tag. */
  PAPER(1.6),
  /** What is black on the tag. */
  ON_PAPER(0),
  /** The plate of what is right. */
  FIT(1.6),
  /** A tick. */
  TICK(1.6),
  /** A cross. */
  CROSS(1.6),
  /** The octagon of what is wrong. */
  STOP(1.6),
  /** What is white on the octagon. */
  WHITE(0),
  /** The ring round what is meant, in its halo. */
  RING(6),
  HALO(13),
  /** The ring round the wrong place, in its halo: two lines, where the right place has one. */
  WRONG_RING(9),
  /** What shows between its two lines. */
  WRONG_GAP(3),

  /** Words. */
  NUMBER(0),
  NAME(0),
  LETTER(0),
  LETTER_ON_PAPER(0),
  LETTER_ON_INK(0);

  private static final List<Double> LEADER_DASHES = List.of(4.5, 1.8, 0.9, 1.8);
  private static final List<Double> AXIS_DASHES = List.of(10.0, 3.6, 2.1, 3.6);
  private static final List<Double> PLATE_DASHES = List.of(2.7, 1.7);

  private final double width;

  Role(double width) {
    this.width = width;
  }

  /** Width of its line in units of {@link Glass}; of a mark's line the least one. */
  double width() {
    return width;
  }

  /** The line's dashes and gaps, in widths of the line; none where it is whole. */
  public List<Double> dashes() {
    return switch (this) {
      case LEADER -> LEADER_DASHES;
      case AXIS -> AXIS_DASHES;
      case DASHED_PLATE -> PLATE_DASHES;
      default -> List.of();
    };
  }

  /** Whether it is of a part, so that the part's state says how it looks. */
  public boolean isOfPart() {
    return compareTo(BODY) >= 0 && compareTo(BAND) <= 0;
  }
}
