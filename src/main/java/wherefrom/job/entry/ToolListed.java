package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/**
 * A measuring tool of the person's own; listed again under the same name, the later card counts.
 * All three figures are in the unit of the resolution.
 *
 * @param resolution the smallest step that it shows
 * @param error by how much it may be off, at most
 * @param repeat by how much a repeat may differ, at most
 */
public record ToolListed(String name, Amount resolution, Amount error, Amount repeat)
    implements JobEntry {
  public ToolListed {
    error = error.to(resolution.unit());
    repeat = repeat.to(resolution.unit());
  }
}
