package wherefrom.job.entry;

import java.util.List;
import wherefrom.parts.TagType;

/** Tags were printed. Only what was printed can be read as issued. */
public record TagsPrinted(TagType type, List<Integer> items, String stock) implements JobEntry {
  public TagsPrinted {
    items = List.copyOf(items);
  }

  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
