package wherefrom.job.pages;

import java.util.List;

/**
 * All that the record says of one cylinder.
 *
 * @param where in words, such as {@code left bank, second from the front}
 * @param columns its valves in the order in which they stand, then its bottom end
 * @param events the days on which something happened to it, the oldest first
 * @param pictures its photographs
 */
public record CylinderSheet(
    int number,
    String where,
    List<RecordColumn> columns,
    List<RecordEvent> events,
    List<RecordPicture> pictures) {
  public CylinderSheet {
    columns = List.copyOf(columns);
    events = List.copyOf(events);
    pictures = List.copyOf(pictures);
  }
}
