package wherefrom.job.entry;

import java.util.Optional;

/** An earlier entry is taken back: the state is as if it had not been made. */
public record TakenBack(long sequence) implements JobEntry {
  @Override
  public boolean canBeTakenBack() {
    return false;
  }

  @Override
  public Optional<Long> findTakenBack() {
    return Optional.of(sequence);
  }
}
