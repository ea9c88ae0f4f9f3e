package wherefrom.inspection;

import java.util.regex.Pattern;

/** Whether a source is named so that a reader can find it, or owns up to being none. */
public final class Citations {
  private static final Pattern NONE =
      Pattern.compile("common practice, no source|from memory|worked out");

  /** Publications that are found by their number alone. */
  private static final Pattern NUMBERED =
      Pattern.compile(
          "TM \\d+-\\d{4}|TM \\d+-\\d{4}-|NAVEDTRA \\d{5}|FAA-H-8083-\\d\\d|FAA AC \\d\\d\\.\\d\\d|JCGM 10\\d:20\\d\\d"
              + "|ISO \\d{4,}|\\d\\d CFR \\d+|doi:10\\.");

  private static final Pattern TITLE = Pattern.compile("\"[A-Z][^\"]+\"|Manual|Profile");
  private static final Pattern YEAR = Pattern.compile("\\b(19|20)\\d\\d\\b|\\bundated\\b");

  /** A kind of publication instead of a publication: "a repair manual", "trade quiz page". */
  private static final Pattern VAGUE =
      Pattern.compile(
          "(?i)\\b(an?|some|trade|racing|small-engine|fastener|overhaul)\\b[a-z' -]*"
              + "\\b(magazine|article|manual|textbook|guide|sheet|page)\\b");

  private Citations() {}

  public static boolean canBeFound(String source) {
    if (VAGUE.matcher(source).find()) {
      return false;
    }
    return NONE.matcher(source).find()
        || NUMBERED.matcher(source).find()
        || (TITLE.matcher(source).find() && YEAR.matcher(source).find());
  }
}
