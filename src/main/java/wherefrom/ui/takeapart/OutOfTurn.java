package wherefrom.ui.takeapart;

import java.util.List;
import wherefrom.job.PartRecord;

/**
 * A part that was tapped and wants a word first.
 *
 * @param over what is still over it; empty where it is only not the next one
 */
record OutOfTurn(PartRecord part, List<PartRecord> over) {
  OutOfTurn {
    over = List.copyOf(over);
  }
}
