package wherefrom.job.pages;

import java.util.List;

/** Lines under one heading, such as {@code 3 EX}. */
public record RecordColumn(String title, List<RecordLine> lines) {
  public RecordColumn {
    lines = List.copyOf(lines);
  }
}
