package wherefrom.workings;

import java.util.Locale;

/** A sentence that goes with a result: key for programs, text and source for people. */
public record Note(Kind kind, String key, String text, Source source) {

  /** What a note is for. */
  public enum Kind {
    /** What the figures say, such as "accept". */
    CONCLUSION,
    /** A margin under a minimum, or something that can hurt. */
    CAUTION,
    /** A figure that is not usual: it may be a slip, and may be right. */
    QUESTION,
    /** What could not be worked out, and what it lacks. */
    LACKING,
    /** What was left out, or how a figure is meant. */
    REMARK;

    /** The name for programs; what is lacking is a remark there. */
    public String id() {
      return (this == LACKING ? REMARK : this).name().toLowerCase(Locale.ROOT);
    }
  }

  public static Note conclusion(String key, String text, Source source) {
    return new Note(Kind.CONCLUSION, key, text, source);
  }

  public static Note caution(String key, String text, Source source) {
    return new Note(Kind.CAUTION, key, text, source);
  }

  public static Note question(String key, String text, Source source) {
    return new Note(Kind.QUESTION, key, text, source);
  }

  public static Note lacking(String key, String text, Source source) {
    return new Note(Kind.LACKING, key, text, source);
  }

  public static Note remark(String key, String text, Source source) {
    return new Note(Kind.REMARK, key, text, source);
  }
}
