package wherefrom.job.measure;

import java.util.List;

/**
 * A set drawn member by member.
 *
 * @param middle what the members stand off from
 * @param sentence what may be said
 * @param unit of every figure, as a symbol
 */
public record SetPicture(
    String title, String middle, String sentence, List<SetDot> dots, String unit) {
  public SetPicture {
    dots = List.copyOf(dots);
  }
}
