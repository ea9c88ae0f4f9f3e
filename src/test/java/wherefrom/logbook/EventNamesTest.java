package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.tables.EventNames;

/** The table of events names entries as the logbook does, whatever their classes are called. */
class EventNamesTest {
  @Test
  void anEventHasTheNameThatItHasInTheLogbook() {
    assertThat(EntryTypes.all())
        .isNotEmpty()
        .allSatisfy((name, kind) -> assertThat(EventNames.of(kind)).isEqualTo(name));
  }
}
